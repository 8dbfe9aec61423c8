//! Several tabs on one storage that hears of writings late: nothing typed is lost, and the tabs
//! come to agree.
//!
//! The storage here behaves as browsers do with a page in several processes: a tab sees its own
//! writings at once and those of others later, the last one to arrive stands, and nobody is asked.

use nightbank::model::Setup;
use nightbank::store::{EntryId, Library, TabMemory};
use proptest::collection::vec;
use proptest::prelude::*;
use std::collections::BTreeSet;

#[derive(Clone, Copy, Debug)]
enum Step {
    /// The tab types a new name into one of the setups it shows.
    Type { tab: usize, setup: usize },
    /// The tab adds a setup.
    Add { tab: usize },
    /// The tab writes, knowing only what it has heard of.
    Write { tab: usize },
    /// The tab hears what stands in storage now.
    Hear { tab: usize },
}

struct Tab {
    library: Library,
    memory: TabMemory,
    /// The storage as this tab sees it.
    sees: Option<String>,
}

struct World {
    tabs: Vec<Tab>,
    stored: Option<String>,
    clock_ms: u64,
    typed: u32,
    /// Names typed that nobody has typed over since, having them on screen.
    standing: BTreeSet<String>,
}

impl World {
    fn new(tabs: usize) -> Self {
        let tab = |number| Tab {
            library: Library::default(),
            memory: TabMemory::new(number, Library::default(), None, false),
            sees: None,
        };
        Self {
            tabs: (1..=tabs as u64).map(tab).collect(),
            stored: None,
            clock_ms: 1_000,
            typed: 0,
            standing: BTreeSet::new(),
        }
    }

    fn fresh(&mut self) -> Setup {
        self.typed += 1;
        let name = format!("name {}", self.typed);
        self.standing.insert(name.clone());
        Setup { name, ..Setup::default() }
    }

    fn take(&mut self, step: Step) {
        // Several changes may fall into one millisecond.
        self.clock_ms += u64::from(self.typed.is_multiple_of(3));
        match step {
            Step::Type { tab, setup } => {
                let entries = self.tabs[tab].library.entries();
                let Some(entry) = entries.get(setup % entries.len().max(1)) else { return };
                let (id, over) = (entry.id, entry.setup.name.clone());
                self.standing.remove(&over);
                let setup = self.fresh();
                self.tabs[tab].library.update(id, setup, self.clock_ms).expect("it is there");
            }
            Step::Add { tab } => {
                // Enough for conflicts, few enough that every version finds room.
                if self.tabs[tab].library.entries().len() < 3 {
                    let setup = self.fresh();
                    self.tabs[tab].library.add(setup, self.clock_ms).expect("room");
                }
            }
            Step::Write { tab } => self.write(tab),
            Step::Hear { tab } => {
                self.hear(tab);
            }
        }
    }

    fn take_in(&mut self, tab: usize) {
        let Tab { library, memory, sees } = &mut self.tabs[tab];
        if let Some(text) = sees
            && !memory.knows(text)
        {
            let taken = memory.take_in(text.clone(), library);
            assert_eq!(taken.unread, Vec::<String>::new(), "everything found room");
            *library = taken.library.expect("it reads");
        }
    }

    fn write(&mut self, tab: usize) {
        self.take_in(tab);
        let Tab { library, memory, sees } = &mut self.tabs[tab];
        if memory.has_news(library) {
            let stored = &mut self.stored;
            memory
                .write(library, |json| {
                    *stored = Some(json.to_string());
                    sees.clone_from(stored);
                    Ok::<(), ()>(())
                })
                .expect("it writes");
        }
    }

    /// As the page does on a storage event; `true` where it answered by writing.
    fn hear(&mut self, tab: usize) -> bool {
        self.tabs[tab].sees.clone_from(&self.stored);
        self.take_in(tab);
        let lacks = self.tabs[tab].memory.lacks(&self.tabs[tab].library);
        let unwritten = self.tabs[tab].sees.is_some() && lacks;
        if unwritten {
            self.write(tab);
        }
        unwritten
    }

    /// Everybody writes and hears until nobody has anything to say.
    fn settle(&mut self) {
        for tab in 0..self.tabs.len() {
            self.write(tab);
        }
        for _ in 0..8 {
            let mut said = false;
            for tab in 0..self.tabs.len() {
                said |= self.hear(tab);
            }
            if !said {
                return;
            }
        }
        panic!("the tabs answer each other for ever");
    }
}

fn names(library: &Library) -> BTreeSet<String> {
    library.entries().iter().map(|entry| entry.setup.name.clone()).collect()
}

fn ids(library: &Library) -> Vec<EntryId> {
    library.entries().iter().map(|entry| entry.id).collect()
}

fn step(tabs: usize) -> impl Strategy<Value = Step> {
    prop_oneof![
        3 => (0..tabs, 0..4_usize).prop_map(|(tab, setup)| Step::Type { tab, setup }),
        1 => (0..tabs).prop_map(|tab| Step::Add { tab }),
        3 => (0..tabs).prop_map(|tab| Step::Write { tab }),
        2 => (0..tabs).prop_map(|tab| Step::Hear { tab }),
    ]
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 1500, failure_persistence: None, ..Default::default() })]

    #[test]
    fn nothing_typed_is_lost_and_all_tabs_agree(
        (tabs, steps) in (2..4_usize).prop_flat_map(|tabs| (Just(tabs), vec(step(tabs), 1..16)))
    ) {
        let mut world = World::new(tabs);
        for step in steps {
            world.take(step);
        }
        world.settle();
        let all = names(&world.tabs[0].library);
        let lost: Vec<_> = world.standing.difference(&all).collect();
        prop_assert!(lost.is_empty(), "lost {:?} of {:?}", lost, all);
        for tab in &world.tabs {
            prop_assert_eq!(names(&tab.library), all.clone());
            prop_assert_eq!(ids(&tab.library), ids(&world.tabs[0].library));
        }
    }
}

/// The case that once lost a tab's text: both write before either hears of the other.
#[test]
fn two_writings_at_once_are_both_kept() {
    let mut world = World::new(2);
    world.take(Step::Add { tab: 0 });
    world.settle();
    world.take(Step::Type { tab: 0, setup: 0 });
    world.take(Step::Type { tab: 1, setup: 0 });
    // Typed over by each without having seen the other's.
    let (one, two) = ("name 2".to_owned(), "name 3".to_owned());
    world.take(Step::Write { tab: 0 });
    world.take(Step::Write { tab: 1 });
    world.settle();
    for tab in &world.tabs {
        assert_eq!(names(&tab.library), BTreeSet::from([one.clone(), two.clone()]));
        assert_eq!(tab.library.entries().len(), 2, "each version once");
    }
}

//! The layers and the rooms of the page point one way, calculation knows no browser, and no modules
//! import each other in a circle.
//!
//! Paths are read with `syn`, wherever they stand: imports (groups, globs and `super` included), code,
//! and the tokens of macros such as `view!`. A path leads to the file that defines what it names, so a
//! name passed on by a `pub use` counts as used from where it comes from. Documentation may name
//! anything, and so may the tests inside a file.

use proc_macro2::{TokenStream, TokenTree};
use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::Path;
use syn::visit::{self, Visit};
use syn::{Attribute, Item, UseTree, Visibility};

/// A layer and what it may use of the crate.
const LAYERS: [(&str, &[&str]); 11] = [
    ("units", &[]),
    ("model", &["units"]),
    ("physics", &["units", "model"]),
    ("forecast", &["units", "model", "physics"]),
    ("advice", &["units", "model", "physics", "forecast"]),
    ("link", &["units", "model"]),
    ("store", &["units", "model", "link"]),
    ("i18n", &[]),
    ("export", &["units"]),
    ("import", &["units", "model", "forecast", "advice", "link"]),
    (
        "view",
        &[
            "units", "model", "physics", "forecast", "advice", "link", "store", "i18n", "export",
            "import",
        ],
    ),
];

/// The rooms of the page, from the ground up: each uses itself and those before it.
const ROOMS: [(&str, &[&str]); 7] = [
    (
        "ground",
        &[
            "arc_ptr_eq",
            "certainty",
            "climate_file",
            "fetched",
            "focus",
            "icons",
            "jobs",
            "lang",
            "lens",
            "offline",
            "page_address",
            "places_file",
            "preferences",
            "reader",
            "state",
            "storage",
            "tasks",
            "text_file",
            "today",
            "wide",
            "working",
        ],
    ),
    ("widgets and charts", &["chart", "widgets"]),
    ("words", &["words"]),
    ("answer", &["answer", "load_energy", "outlook", "search"]),
    ("setups", &["recovery", "setups"]),
    ("screens", &["change", "loads", "more", "power", "share", "start", "tools", "trip"]),
    ("frame", &["parts", "shell"]),
];

/// Crates that only the page may touch.
const BROWSER: [&str; 9] = [
    "leptos",
    "web_sys",
    "js_sys",
    "wasm_bindgen",
    "wasm_bindgen_futures",
    "gloo",
    "gloo_storage",
    "plotters",
    "plotters_canvas",
];

/// Folders of data whose rows name a type of their `mod.rs`: circles still to be opened.
const STILL_OPEN: [&str; 3] = ["model::climate", "model::places", "model::regions"];

/// A module that is a file.
#[derive(Default)]
struct Module {
    /// What it defines itself, macros included.
    own: BTreeSet<String>,
    /// Names it imports or passes on, with the whole path; and whether it passes them on.
    imports: Vec<Import>,
    /// Paths in its code, imports apart, as written.
    paths: BTreeSet<Vec<String>>,
}

struct Import {
    /// The name here, `*` for everything.
    name: String,
    path: Vec<String>,
    passed_on: bool,
}

/// All modules of the crate by their path, such as `view::widgets::tip`; the crate itself is empty.
type Modules = BTreeMap<Vec<String>, Module>;

fn words(path: &str) -> Vec<String> {
    path.split("::").map(str::to_owned).collect()
}

fn name(path: &[String]) -> String {
    path.join("::")
}

fn only_in_tests(attributes: &[Attribute]) -> bool {
    attributes.iter().any(|attribute| {
        attribute.path().is_ident("cfg")
            && attribute.parse_args::<syn::Path>().is_ok_and(|path| path.is_ident("test"))
    })
}

fn attributes(item: &Item) -> &[Attribute] {
    match item {
        Item::Const(item) => &item.attrs,
        Item::Enum(item) => &item.attrs,
        Item::Fn(item) => &item.attrs,
        Item::Impl(item) => &item.attrs,
        Item::Mod(item) => &item.attrs,
        Item::Struct(item) => &item.attrs,
        Item::Use(item) => &item.attrs,
        _ => &[],
    }
}

impl Module {
    fn import(&mut self, tree: &UseTree, before: &[String], passed_on: bool) {
        let mut path = before.to_vec();
        match tree {
            UseTree::Path(tree) => {
                path.push(tree.ident.to_string());
                self.import(&tree.tree, &path, passed_on);
            }
            UseTree::Name(tree) if tree.ident == "self" => {
                let name = before.last().cloned().unwrap_or_default();
                self.imports.push(Import { name, path, passed_on });
            }
            UseTree::Name(tree) => {
                let name = tree.ident.to_string();
                path.push(name.clone());
                self.imports.push(Import { name, path, passed_on });
            }
            UseTree::Rename(tree) => {
                path.push(tree.ident.to_string());
                self.imports.push(Import { name: tree.rename.to_string(), path, passed_on });
            }
            UseTree::Glob(_) => {
                self.imports.push(Import { name: "*".to_owned(), path, passed_on });
            }
            UseTree::Group(tree) => {
                for tree in &tree.items {
                    self.import(tree, before, passed_on);
                }
            }
        }
    }

    /// Reads a file; modules written out inside it belong to it.
    fn read(&mut self, items: &[Item]) {
        for item in items.iter().filter(|item| !only_in_tests(attributes(item))) {
            match item {
                Item::Use(item) => {
                    let passed_on = !matches!(item.vis, Visibility::Inherited);
                    self.import(&item.tree, &[], passed_on);
                    continue;
                }
                Item::Mod(item) => {
                    if let Some((_, items)) = &item.content {
                        self.read(items);
                    }
                    continue;
                }
                Item::Const(item) => _ = self.own.insert(item.ident.to_string()),
                Item::Enum(item) => _ = self.own.insert(item.ident.to_string()),
                Item::Fn(item) => _ = self.own.insert(item.sig.ident.to_string()),
                Item::Static(item) => _ = self.own.insert(item.ident.to_string()),
                Item::Struct(item) => _ = self.own.insert(item.ident.to_string()),
                Item::Trait(item) => _ = self.own.insert(item.ident.to_string()),
                Item::Type(item) => _ = self.own.insert(item.ident.to_string()),
                Item::Macro(item) => {
                    self.own.extend(item.ident.as_ref().map(ToString::to_string));
                }
                _ => {}
            }
            self.visit_item(item);
        }
    }

    /// Paths among the tokens of a macro, which `syn` does not look into.
    fn tokens(&mut self, tokens: TokenStream) {
        let mut path: Vec<String> = Vec::new();
        let mut colons = 0;
        for token in tokens {
            match token {
                TokenTree::Ident(ident) => {
                    if colons != 2 {
                        self.path(std::mem::take(&mut path));
                    }
                    path.push(ident.to_string());
                    colons = 0;
                }
                TokenTree::Punct(punct) if punct.as_char() == ':' => colons += 1,
                TokenTree::Group(group) => {
                    self.path(std::mem::take(&mut path));
                    self.tokens(group.stream());
                    colons = 0;
                }
                _ => {
                    self.path(std::mem::take(&mut path));
                    colons = 0;
                }
            }
        }
        self.path(path);
    }

    fn path(&mut self, path: Vec<String>) {
        if !path.is_empty() {
            self.paths.insert(path);
        }
    }
}

impl<'ast> Visit<'ast> for Module {
    fn visit_attribute(&mut self, _: &'ast Attribute) {}

    // `pub(super)` uses nothing.
    fn visit_visibility(&mut self, _: &'ast Visibility) {}

    fn visit_item_use(&mut self, item: &'ast syn::ItemUse) {
        // Inside a function.
        self.import(&item.tree, &[], false);
    }

    fn visit_path(&mut self, path: &'ast syn::Path) {
        let path_words = path.segments.iter().map(|segment| segment.ident.to_string()).collect();
        self.path(path_words);
        visit::visit_path(self, path);
    }

    fn visit_macro(&mut self, found: &'ast syn::Macro) {
        visit::visit_macro(self, found);
        self.tokens(found.tokens.clone());
    }
}

fn read_modules(dir: &Path, at: &[String], out: &mut Modules) {
    let entries = fs::read_dir(dir).expect("a folder of sources");
    for entry in entries {
        let path = entry.expect("readable").path();
        let stem = path.file_stem().expect("has a name").to_string_lossy().into_owned();
        let mut module = at.to_vec();
        if path.is_dir() {
            module.push(stem);
            read_modules(&path, &module, out);
        } else if path.extension().is_some_and(|end| end == "rs") {
            if !["lib", "mod"].contains(&stem.as_str()) {
                module.push(stem);
            }
            // `main.rs` is a program that stands on the library; `tests.rs` is not part of it.
            if module.last().is_some_and(|last| ["main", "tests"].contains(&last.as_str())) {
                continue;
            }
            let text = fs::read_to_string(&path).expect("readable source");
            let file = syn::parse_file(&text).expect("Rust that compiles");
            out.entry(module).or_default().read(&file.items);
        }
    }
}

fn modules() -> Modules {
    let mut modules = Modules::new();
    read_modules(&Path::new(env!("CARGO_MANIFEST_DIR")).join("src"), &[], &mut modules);
    assert!(modules.len() > 150, "{} modules found", modules.len());
    modules
}

/// Where `path`, written in module `here`, leads: the module that defines it. `None` where it leads
/// out of the crate or to something local.
fn defined_in(
    modules: &Modules,
    here: &[String],
    path: &[String],
    depth: usize,
) -> Option<Vec<String>> {
    // Two globs may name each other.
    if depth > 12 {
        return None;
    }
    let (first, rest) = path.split_first()?;
    let in_module = |module: &[String], rest: &[String]| {
        if rest.is_empty() {
            return Some(module.to_vec());
        }
        resolve(modules, module, rest, depth + 1)
    };
    match first.as_str() {
        "crate" | "nightbank" => in_module(&[], rest),
        "self" => in_module(here, rest),
        "super" => in_module(here.split_last()?.1, rest),
        _ => resolve(modules, here, path, depth + 1),
    }
}

/// The module that defines the first name of `path` (and what follows in it) as seen inside `module`.
fn resolve(
    modules: &Modules,
    module: &[String],
    path: &[String],
    depth: usize,
) -> Option<Vec<String>> {
    let (first, rest) = path.split_first()?;
    if first == "super" {
        return defined_in(modules, module, path, depth);
    }
    let mut child = module.to_vec();
    child.push(first.clone());
    if modules.contains_key(&child) {
        return if rest.is_empty() {
            Some(child)
        } else {
            resolve(modules, &child, rest, depth + 1).or(Some(child))
        };
    }
    let content = modules.get(module)?;
    if content.own.contains(first) {
        return Some(module.to_vec());
    }
    for import in content.imports.iter().filter(|import| import.name == *first) {
        if import.path.len() == 1 && import.path[0] == *first {
            continue;
        }
        let mut whole = import.path.clone();
        whole.extend(rest.iter().cloned());
        return defined_in(modules, module, &whole, depth + 1);
    }
    for import in content.imports.iter().filter(|import| import.name == "*") {
        let mut whole = import.path.clone();
        whole.extend(path.iter().cloned());
        let found = defined_in(modules, module, &whole, depth + 1);
        if found.is_some() {
            return found;
        }
    }
    None
}

/// What each module uses of others.
fn uses(modules: &Modules) -> BTreeMap<Vec<String>, BTreeSet<Vec<String>>> {
    let mut uses = BTreeMap::new();
    for (here, module) in modules {
        let mut used = BTreeSet::new();
        for path in &module.paths {
            used.extend(defined_in(modules, here, path, 0));
        }
        for import in module.imports.iter().filter(|import| !import.passed_on) {
            used.extend(defined_in(modules, here, &import.path, 0));
        }
        used.remove(here);
        uses.insert(here.clone(), used);
    }
    uses
}

/// A way from `from` back to itself, if there is one.
fn circle(
    uses: &BTreeMap<Vec<String>, BTreeSet<Vec<String>>>,
    from: &[String],
) -> Option<Vec<Vec<String>>> {
    let mut came_from: BTreeMap<&[String], &[String]> = BTreeMap::new();
    let mut next = vec![from];
    while !next.is_empty() {
        let mut further = Vec::new();
        for here in next {
            for there in uses.get(here).into_iter().flatten() {
                if there == from {
                    let mut way = vec![from.to_vec()];
                    let mut at = here;
                    while at != from {
                        way.push(at.to_vec());
                        at = came_from[at];
                    }
                    way.push(from.to_vec());
                    way.reverse();
                    return Some(way);
                }
                if !came_from.contains_key(there.as_slice()) {
                    came_from.insert(there, here);
                    further.push(there.as_slice());
                }
            }
        }
        next = further;
    }
    None
}

#[test]
fn lower_layers_do_not_use_upper_ones() {
    let modules = modules();
    for (here, used) in uses(&modules) {
        let Some(layer) = here.first() else { continue };
        let (_, may_use) = LAYERS
            .iter()
            .find(|(known, _)| known == layer)
            .unwrap_or_else(|| panic!("no layer named {layer}"));
        for there in used {
            let Some(other) = there.first() else { continue };
            assert!(
                other == layer || may_use.contains(&other.as_str()),
                "{} uses {}",
                name(&here),
                name(&there)
            );
        }
    }
}

#[test]
fn the_rooms_of_the_page_use_each_other_in_one_direction() {
    let modules = modules();
    let room = |module: &[String]| {
        let part = module.get(1)?;
        let found = ROOMS.iter().position(|(_, parts)| parts.contains(&part.as_str()));
        Some(found.unwrap_or_else(|| panic!("{} is in no room", name(module))))
    };
    for (here, used) in uses(&modules) {
        if here.first().is_none_or(|layer| layer != "view") {
            continue;
        }
        for there in used.iter().filter(|there| there.first().is_some_and(|at| at == "view")) {
            let (Some(from), Some(to)) = (room(&here), room(there)) else { continue };
            assert!(
                to <= from,
                "{} ({}) uses {} ({})",
                name(&here),
                ROOMS[from].0,
                name(there),
                ROOMS[to].0
            );
        }
    }
}

#[test]
fn no_modules_import_each_other_in_a_circle() {
    let modules = modules();
    let uses = uses(&modules);
    let edges: usize = uses.values().map(BTreeSet::len).sum();
    assert!(edges > 500, "{edges} uses found: the paths are no longer read");
    let mut told = BTreeSet::new();
    let mut circles = Vec::new();
    let open = |module: &[String]| STILL_OPEN.iter().any(|room| name(module).starts_with(room));
    for module in uses.keys().filter(|module| !open(module)) {
        if let Some(way) = circle(&uses, module).filter(|way| way.len() > 1) {
            let members: BTreeSet<_> = way.iter().cloned().collect();
            if told.insert(members) {
                circles
                    .push(way.iter().map(|module| name(module)).collect::<Vec<_>>().join(" -> "));
            }
        }
    }
    assert!(circles.is_empty(), "circles of imports:\n{}", circles.join("\n"));
}

#[test]
fn only_the_page_knows_a_browser() {
    for (here, module) in modules() {
        if here.first().is_none_or(|layer| layer == "view") {
            continue;
        }
        let imports = module.imports.iter().map(|import| &import.path);
        for path in module.paths.iter().chain(imports) {
            let first = path.first().map(String::as_str).unwrap_or_default();
            assert!(!BROWSER.contains(&first), "{} uses {first}", name(&here));
        }
    }
}

#[test]
fn a_path_leads_to_the_file_that_defines_it() {
    let modules = modules();
    let cases = [
        ("view::power::solar", "crate::view::widgets::NumberField", "view::widgets::number_field"),
        ("physics::battery::bank", "super::super::super::units::Watts", "units::quantity"),
    ];
    for (here, path, defines) in cases {
        let found = defined_in(&modules, &words(here), &words(path), 0);
        assert_eq!(found, Some(words(defines)), "{path} in {here}");
    }
}

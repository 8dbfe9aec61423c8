//! From older schemas to the present one.
//!
//! Files and storage carry the number of their schema. A change that serde's defaults cannot bridge
//! raises [`SCHEMA`] and adds a step here; steps are never removed, so anything ever written still
//! reads.

use serde_json::Value;

/// Schema of what is written now.
pub const SCHEMA: u32 = 1;

/// One step: from its schema to the next.
#[derive(Clone, Copy, Debug)]
pub(super) struct Step {
    /// Schema it starts from.
    pub(super) from: u32,
    /// What it does, for the notes.
    pub(super) name: &'static str,
    /// Changes one setup in place.
    pub(super) apply: fn(&mut Value),
}

/// All steps, by the schema they start from. Schema 1 is the first released one.
pub(super) const STEPS: &[Step] = &[];

/// Why a schema cannot be brought to the present.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Unknown {
    /// Of a later version of the page.
    Newer(u32),
    /// No schema was ever numbered so.
    Never(u32),
}

/// The names of the steps from `schema` to the present, in order, and the steps.
pub(super) fn path(schema: u64, steps: &[Step], present: u32) -> Result<Vec<Step>, Unknown> {
    let schema = u32::try_from(schema).unwrap_or(u32::MAX);
    if schema > present {
        return Err(Unknown::Newer(schema));
    }
    (schema..present)
        .map(|from| steps.iter().find(|step| step.from == from).copied())
        .collect::<Option<Vec<_>>>()
        .filter(|_| schema > 0)
        .ok_or(Unknown::Never(schema))
}

#[cfg(test)]
mod tests {
    use super::*;
    use serde_json::json;

    const INVENTED: [Step; 2] = [
        Step {
            from: 2,
            name: "halves",
            apply: |v| v["a"] = json!(v["a"].as_f64().map(|a| a / 2.0)),
        },
        Step {
            from: 1,
            name: "adds one",
            apply: |v| v["a"] = json!(v["a"].as_f64().map(|a| a + 1.0)),
        },
    ];

    #[test]
    fn steps_run_in_the_order_of_their_schemas() {
        let steps = path(1, &INVENTED, 3).expect("known");
        assert_eq!(steps.iter().map(|step| step.name).collect::<Vec<_>>(), ["adds one", "halves"]);
        let mut value = json!({ "a": 5.0 });
        steps.iter().for_each(|step| (step.apply)(&mut value));
        assert_eq!(value, json!({ "a": 3.0 }));
        assert_eq!(path(2, &INVENTED, 3).expect("known").len(), 1);
        assert!(path(3, &INVENTED, 3).expect("known").is_empty());
    }

    #[test]
    fn newer_and_impossible_schemas_are_told_apart() {
        assert_eq!(path(4, &INVENTED, 3).err(), Some(Unknown::Newer(4)));
        assert_eq!(path(u64::MAX, &INVENTED, 3).err(), Some(Unknown::Newer(u32::MAX)));
        assert_eq!(path(0, &INVENTED, 3).err(), Some(Unknown::Never(0)));
    }

    #[test]
    fn every_schema_so_far_has_its_way_to_the_present() {
        for schema in 1..=SCHEMA {
            let steps = path(u64::from(schema), STEPS, SCHEMA).expect("a way");
            assert_eq!(steps.len() as u32, SCHEMA - schema);
        }
    }
}

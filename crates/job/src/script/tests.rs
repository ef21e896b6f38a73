use super::*;
use crate::{
    BlockId, PartKind, Profit, builtin_kit, builtin_prices, builtin_rule_book, builtin_rule_books,
    job_from_text, job_to_text,
};
use chalkcourse_geometry::raise::Treatment;
use chalkcourse_geometry::{EdgeKind, Length, Units, dvec2};
use std::path::Path;

/// A drawn face of 12 × 6 m, and a house of 10 × 8 m beside it.
fn job() -> Resolved {
    let empty = Resolved::new("test".to_owned(), builtin_kit(), builtin_rule_book(), builtin_prices());
    let steps = r#"[
        {"add-face": {"name": "Shed", "corners": [[0, 0], ["12 m", 0], [12, 6.0], [0, 6]], "pitch": "6:12",
                      "downslope": 180.0, "height": "3 m"}},
        {"add-part": {"name": "House", "corners": [[20, 0], [30, 0], [30, 8], [20, 8]], "eave_height": "9 ft",
                      "treatment": {"slope": "6:12"}, "overhang": "1 ft"}},
        {"add-block": {"face": "Shed", "at": ["2 m", "1 m"], "rows": 2, "columns": 3}}
    ]"#;
    done(&empty, steps)
}

fn script(text: &str) -> Script {
    script_from_text(text, Path::new("edits.json")).unwrap()
}

fn done(job: &Resolved, text: &str) -> Resolved {
    script(text).steps.iter().fold(job.clone(), |job, step| match step.apply(&job, &NoFiles) {
        Ok(next) => next,
        Err(wrong) => panic!("{}: {wrong}", step.name()),
    })
}

/// A step that the job rejects, with words that the error contains.
fn refused(job: &Resolved, text: &str, words: &[&str]) {
    let script = script(text);
    let Err(said) = script.steps[0].apply(job, &NoFiles) else { panic!("{text} is not refused") };
    let said = said.to_string();
    for word in words {
        assert!(said.contains(word), "{text}: {said:?} does not say {word:?}");
    }
}

fn unreadable(text: &str, words: &[&str]) {
    let said = script_from_text(text, Path::new("edits.json")).unwrap_err().to_string();
    for word in words.iter().chain(&["edits.json"]) {
        assert!(said.contains(word), "{text}: {said:?} does not say {word:?}");
    }
}

#[test]
fn new_things_have_names_and_the_next_numbers() {
    let job = job();
    assert_eq!((job.faces[0].id.0, job.parts[0].id.0, job.blocks[0].name.as_str()), (1, 2, "A"));
    assert_eq!(job.faces.len(), 5);
    let more = r#"[
        {"add-block": {"face": 1, "at": [6, 1], "rows": 1, "columns": 1}},
        {"add-penetration": {"kind": "vent", "at": [3, 3]}},
        {"add-penetration": {"kind": "vent", "at": [4, 3]}},
        {"add-part": {"kind": "chimney", "corners": [[25, 3], [26, 3], [26, 4], [25, 4]], "eave_height": "8 m"}},
        {"add-face": {"corners": [[0, 10], [5, 10], [5, 14]], "pitch": "4:12", "downslope": 180, "height": "2 m"}},
        {"remove-block": "B"}
    ]"#;
    let after = done(&job, more);
    let names: Vec<&str> = after.penetrations.iter().map(|there| there.name.as_str()).collect();
    assert_eq!(names, ["Vent", "Vent 2"]);
    assert_eq!((after.parts[1].name.as_str(), after.parts[1].kind), ("Chimney", PartKind::Chimney));
    assert_eq!((after.faces.last().unwrap().name.as_str(), after.blocks.len()), ("Face", 1));
    let text = job_to_text(&after).unwrap();
    assert_eq!(job_from_text(&text, Path::new("job")).unwrap(), after);
}

/// On a 6:12 face that faces south, 1 m up the slope is 12 / sqrt(180) m north in plan.
#[test]
fn places_on_a_face_are_measured_from_its_lower_left_corner() {
    let job = done(
        &job(),
        r#"{"add-penetration": {"name": "V", "kind": "vent", "face": "Shed", "at": ["3 m", 1.0]}}"#,
    );
    let step = 12.0 / 180.0_f64.sqrt();
    assert!(job.penetrations[0].at.distance(dvec2(3.0, step)) < 1e-9);
    let job = done(&job, r#"{"move-penetration": {"penetration": "V", "face": "Shed", "by": [0, "1 m"]}}"#);
    assert!(job.penetrations[0].at.distance(dvec2(3.0, 2.0 * step)) < 1e-9);
    let job = done(&job, r#"{"move-penetration": {"penetration": "V", "by": ["-1 m", 0]}}"#);
    assert!(job.penetrations[0].at.distance(dvec2(2.0, 2.0 * step)) < 1e-9);
    assert!(job.blocks[0].at.distance(dvec2(2.0, 1.0)) < 1e-9);
    let job = done(&job, r#"{"move-block": {"block": "A", "by": ["1 m", "-0.5 m"]}}"#);
    assert!(job.blocks[0].at.distance(dvec2(3.0, 0.5)) < 1e-9);
    // The datum of a face need not be its corner: measurements are from the corner.
    let job = done(&job, r#"{"change-face": {"face": "Shed", "datum": [5.0, 0.0]}}"#);
    let job = done(&job, r#"{"move-block": {"block": "A", "to": ["2 m", "1 m"]}}"#);
    assert!(job.blocks[0].at.distance(dvec2(-3.0, 1.0)) < 1e-9);
}

#[test]
fn corners_and_sides_are_found_by_number() {
    let job = job();
    let moved = done(&job, r#"{"move-corner": {"part": "House", "corner": 3, "by": [0, "2 m"]}}"#);
    assert_eq!(moved.parts[0].outline.outer[2], dvec2(30.0, 10.0));
    let moved = done(&job, r#"{"move-corner": {"face": 1, "corner": "1.2", "to": [13, 0]}}"#);
    assert_eq!(moved.faces[0].outline.outer[1], dvec2(13.0, 0.0));
    let more = done(
        &job,
        r#"[{"add-corner": {"part": 2, "side": 4}}, {"add-corner": {"face": 1, "side": 1, "at": [6, -1]}}]"#,
    );
    assert_eq!((more.parts[0].outline.outer.len(), more.parts[0].outline.outer[4]), (5, dvec2(20.0, 4.0)));
    assert_eq!(more.faces.iter().find(|face| face.id.0 == 1).unwrap().outline.outer[1], dvec2(6.0, -1.0));
    let back = done(
        &more,
        r#"[{"remove-corner": {"part": 2, "corner": 5}}, {"remove-corner": {"face": 1, "corner": 2}}]"#,
    );
    assert_eq!(back.parts[0].outline, job.parts[0].outline);
    assert_eq!(
        (&back.faces[0].outline, &back.faces[0].sides.rings()[0]),
        (&job.faces[0].outline, &job.faces[0].sides.rings()[0])
    );
    let gable = done(
        &job,
        r#"{"change-side": {"part": "House", "side": 2, "treatment": "gable", "overhang": "18 in"}}"#,
    );
    let side = gable.parts[0].sides[0][1];
    assert_eq!((side.treatment, side.overhang, side.id), (Treatment::Gable, Length::from_inches(18.0), 1));
    let all = done(&job, r#"{"change-side": {"part": "House", "overhang": "2 ft", "eave_height": "10 ft"}}"#);
    assert!(all.parts[0].sides[0].iter().all(|side| side.overhang == Length::from_feet(2.0)));
    let all = done(&all, r#"{"change-side": {"part": "House", "eave_height": null}}"#);
    assert!(all.parts[0].sides[0].iter().all(|side| side.eave_height.is_none()));
    let court = done(
        &job,
        r#"{"add-courtyard": {"part": "House", "corners": [[24, 3], [26, 3], [26, 5], [24, 5]]}}"#,
    );
    let court = done(&court, r#"{"move-corner": {"part": "House", "corner": "2.1", "to": [23.5, 3]}}"#);
    assert_eq!(court.parts[0].outline.holes[0][0], dvec2(23.5, 3.0));
    let edge = done(&job, r#"{"overrule-side": {"face": "Shed", "side": 1, "kind": "wall-line"}}"#);
    assert_eq!(
        (Some(edge.faces[0].overruled[0].side), edge.faces[0].overruled[0].kind),
        (edge.faces[0].sides.at(0, 0), EdgeKind::WallLine)
    );
    assert_eq!(done(&edge, r#"{"overrule-side": {"face": "Shed", "side": 1}}"#).faces[0].overruled, []);
}

#[test]
fn building_and_order_are_changed_field_by_field() {
    let job = job();
    let after = done(
        &job,
        r#"[
        {"change-building": {"street_sides": [180.0], "wind_mph": 115, "exposure": "B", "sprinklers": true}},
        {"change-building": {"eave_height": "9 ft", "overhang": "18 in", "sprinklers": null}},
        {"change-site": {"address": "4 Alder Court"}},
        {"change-part": {"part": "House", "eave_height": "10 ft", "name": "Main"}},
        {"change-pricing": {"overhead_percent": "12.5", "profit": {"margin": {"percent": "20"}}}},
        {"change-roof-work": {"scope": "array-faces"}},
        {"change-rule-book": {"name": "Ours"}},
        {"waive": {"key": "setback/block-3/face-1/side-2/rake", "reason": "the neighbour's wall"}},
        {"set-units": "metric"},
        {"set-name": "Alder"}
    ]"#,
    );
    let building = &after.site.building;
    assert_eq!((building.wind_mph, building.sprinklers), (Some(115.0), false));
    assert_eq!(
        (building.street_sides.len(), building.eave_height.map(|eave| eave.show(Units::Metric))),
        (1, Some("2.743 m".to_owned()))
    );
    assert_eq!(
        (after.site.address.as_str(), after.parts[0].eave_height.show(Units::FeetInches).as_str()),
        ("4 Alder Court", "10'")
    );
    assert!(matches!(after.order.pricing.profit, Profit::Margin { .. }));
    assert_eq!(after.order.pricing.overhead_percent.to_string(), "12.5");
    assert_eq!((after.rule_book.name.as_str(), after.name.as_str()), ("Ours", "Alder"));
    assert_eq!(after.waivers[0].reason, "the neighbour's wall");
    let [first, other, ..] = builtin_rule_books();
    let text = format!(r#"{{"take-rule-book": {:?}}}"#, other.name);
    assert_eq!((done(&job, &text).rule_book.clone(), &job.rule_book), (other.clone(), first));
}

#[test]
fn modules_are_counted_from_one() {
    let job = job();
    let off =
        r#"{"switch-modules": {"block": "A", "off": [{"row": 2, "place": 3}, {"row": 1, "place": 1}]}}"#;
    let after = done(&job, off);
    assert_eq!(after.blocks[0].cells().count(), 4);
    let after = done(&after, r#"{"switch-modules": {"block": "A", "on": [{"row": 1, "place": 1}]}}"#);
    assert_eq!(after.blocks[0].off.iter().map(|c| (c.row, c.column)).collect::<Vec<_>>(), [(1, 2)]);
    let after = done(
        &after,
        r#"[{"shift-row": {"block": "A", "row": 2, "by": "3 in"}}, {"change-block": {"block": "A", "rows": 1, "locked": true}}]"#,
    );
    let block = &after.blocks[0];
    assert!(block.locked && block.off.is_empty() && block.shifts.is_empty() && block.rows == 1);
    refused(
        &job,
        r#"{"switch-modules": {"block": "A", "off": [{"row": 0, "place": 1}]}}"#,
        &["off", "rows 1 to 2"],
    );
    refused(&job, r#"{"shift-row": {"block": "A", "row": 3, "by": "3 in"}}"#, &["row", "there is no row 3"]);
}

#[test]
fn errors_name_what_would_fit_the_job() {
    let job = done(
        &job(),
        r#"{"add-face": {"name": "Shed", "corners": [[0, 10], [5, 10], [5, 14]], "pitch": "4:12", "downslope": 180, "height": "2 m"}}"#,
    );
    refused(&job, r#"{"remove-block": "Z"}"#, &["no block", "\"Z\"", "7 \"A\""]);
    refused(&job, r#"{"remove-penetration": 5}"#, &["no penetration 5", "none"]);
    refused(
        &job,
        r#"{"change-face": {"face": "Shed", "pitch": "5:12"}}"#,
        &["more than one", "by its number", "1, "],
    );
    refused(&job, r#"{"change-block": {"block": "A", "row": 3}}"#, &["field", "unknown field `row`", "rows"]);
    refused(&job, r#"{"change-block": {"block": "A", "rows": "three"}}"#, &["field rows", "three"]);
    refused(&job, r#"{"change-block": {"block": "A", "id": 9}}"#, &["field id", "leave it out"]);
    refused(&job, r#"{"change-block": {"block": "A", "face": 77}}"#, &["no face 77"]);
    refused(&job, r#"{"change-block": {"block": "A", "rows": 0}}"#, &["1 to 10000 places"]);
    refused(&job, r#"{"move-corner": {"corner": 1, "by": [0, 0]}}"#, &["part or face"]);
    refused(&job, r#"{"move-corner": {"part": 2, "corner": 1}}"#, &["to or by"]);
    refused(
        &job,
        r#"{"move-corner": {"part": 2, "corner": 9, "by": [1, 1]}}"#,
        &["corner", "there is no 9", "4 corners"],
    );
    refused(&job, r#"{"remove-corner": {"part": 2, "corner": "2.1"}}"#, &["there is no 2.1"]);
    refused(
        &job,
        r#"{"change-side": {"part": 2, "side": 5, "overhang": "1 ft"}}"#,
        &["side", "there is no 5"],
    );
    refused(&job, r#"{"change-underlay": {"dim": 0.5}}"#, &["set-underlay"]);
    refused(&job, r#"{"take-kit": "kit.json"}"#, &["kit.json", "no file is read"]);
    refused(&job, r#"{"waive": {"key": "x", "reason": " "}}"#, &["reason"]);
    refused(&job, r#"{"change-kit": {"name": "", "orientations": []}}"#, &["kit"]);
    refused(&job, r#"{"add-part": {"corners": [[0, 0]], "eave_height": "9 ft"}}"#, &["treatment", "gable"]);
    let number = format!(
        r#"{{"put-penetration": {{"id": {}, "name": "", "kind": "vent", "at": [1, 1], "shape": {{"is": "circle", "diameter": "4 in"}}}}}}"#,
        u32::MAX
    );
    refused(&job, &number, &["4294967295", "numbers go up to"]);
    // A face that follows from a part says so.
    let face = job.faces.iter().find(|face| face.from.is_some()).unwrap();
    refused(
        &job,
        &format!(r#"{{"move-corner": {{"face": {}, "corner": 1, "by": [1, 1]}}}}"#, face.id),
        &["follows from a part"],
    );
}

#[test]
fn script_errors_name_step_and_field() {
    unreadable("", &["line 1"]);
    unreadable(
        "[{\"set-name\": \"x\"}, {\"jump\": 1}]",
        &["edit 2 of 2", "\"jump\"", "move-corner", "set-name"],
    );
    unreadable("[{}]", &["edit 1 of 1", "one field"]);
    unreadable("[{\"set-name\": \"x\", \"unwaive\": \"y\"}]", &["one field"]);
    unreadable(r#"{"add-block": {"face": 1, "at": [1, 2, 3], "rows": 1, "columns": 1}}"#, &["add-block.at"]);
    unreadable(
        r#"{"add-block": {"face": 1, "at": ["1", 2], "rows": 1, "columns": 1}}"#,
        &["at[0]", "no unit"],
    );
    unreadable(r#"{"add-penetration": {"kind": "hatch", "at": [1, 2]}}"#, &["kind", "hatch", "skylight"]);
    unreadable(r#"{"move-corner": {"part": 1, "corner": 0, "by": [1, 2]}}"#, &["corner", "count from 1"]);
    unreadable(r#"{"move-corner": {"part": 1, "corner": 1.5, "by": [1, 2]}}"#, &["corner"]);
    unreadable(r#"{"remove-block": {"name": "A"}}"#, &["remove-block", "a name"]);
    unreadable(r#"{"add-penetration": {"kind": "vent", "at": [1, 2], "hight": 1}}"#, &["hight", "clearance"]);
    unreadable(r#"{"format": "chalkcourse-job", "version": 1, "data": []}"#, &["chalkcourse-edits"]);
    unreadable(r#"{"format": "chalkcourse-edits", "version": 99, "data": []}"#, &["version 99"]);
    unreadable(
        r#"{"format": "chalkcourse-edits", "version": 1, "language": "xx", "data": []}"#,
        &["xx", "en, es"],
    );
    unreadable(r#"{"format": "chalkcourse-edits", "version": 1, "date": []}"#, &["date"]);
}

/// Every step name is known to its enum, and none of the enum's is missing.
#[test]
fn step_names_match_their_enums() {
    let words = |schema: Schema| -> Vec<String> {
        let all = schema.get("oneOf").and_then(Value::as_array).unwrap();
        let mut words: Vec<String> = all
            .iter()
            .flat_map(|one| one["required"].as_array().unwrap())
            .map(|word| word.as_str().unwrap().to_owned())
            .collect();
        words.sort_unstable();
        words
    };
    let sorted = |names: &[&str]| {
        let mut names: Vec<String> = names.iter().map(|name| (*name).to_owned()).collect();
        names.sort_unstable();
        names
    };
    assert_eq!(words(schemars::schema_for!(Change)), sorted(&Change::NAMES));
    assert_eq!(words(schemars::schema_for!(Edit)), sorted(&Edit::NAMES));
}

#[test]
fn the_schema_agrees_with_the_reader() {
    let schema = edits_schema().to_value();
    let validator = jsonschema::validator_for(&schema).unwrap();
    let check = |text: &str, good: bool| {
        let value: Value = serde_json::from_str(text).unwrap();
        assert_eq!(validator.is_valid(&value), good, "{text}");
        assert_eq!(script_from_text(text, Path::new("x")).is_ok(), good, "{text}");
    };
    check(r#"{"move-corner": {"part": "House", "corner": "2.1", "by": ["2 ft", 0]}}"#, true);
    check(r#"[{"change-side": {"part": 1, "side": 2, "overhang": "1 ft"}}, {"remove-block": 7}]"#, true);
    check(
        r#"{"format": "chalkcourse-edits", "version": 1, "language": "es", "data": [{"unwaive": "x"}]}"#,
        true,
    );
    check(r#"{"add-penetration": {"kind": "vent", "at": [0, 1], "size": {"round": "4 in"}}}"#, true);
    check(r#"{"change-building": {"wind_mph": 115, "street_sides": null}}"#, true);
    check(r#"{"remove-block": 7, "set-name": "x"}"#, false);
    check(r#"{"add-penetration": {"kind": "vent", "at": [0, 1], "colour": "red"}}"#, false);
    check(r#"{"add-penetration": {"kind": "vent", "at": [0]}}"#, false);
    check(r#"{"stir": 1}"#, false);
    // The schema knows the fields of an object; reading leaves them to the object itself.
    let value = serde_json::json!({"change-building": {"wind": 115}});
    assert!(!validator.is_valid(&value));
    let value = serde_json::json!({"change-block": {"block": "A", "id": 4}});
    assert!(!validator.is_valid(&value));
    // What the program writes conforms to the schema.
    let edits = [Edit::SetName("x".to_owned()), Edit::RemoveBlock(BlockId(3)), Edit::SetKit(builtin_kit())];
    let text = edits_to_text(&edits).unwrap();
    assert!(validator.is_valid(&serde_json::from_str(&text).unwrap()), "{text}");
}

#[test]
fn differences_have_object_old_and_new_value() {
    let before = job();
    let after = done(
        &before,
        r#"[
        {"change-block": {"block": "A", "rows": 3}},
        {"add-penetration": {"name": "P", "kind": "pipe-boot", "at": [1, 1]}},
        {"change-building": {"wind_mph": 120}},
        {"change-side": {"part": "House", "side": 2, "treatment": "gable"}}
    ]"#,
    );
    let found = differences(&before, &after);
    let of = |what: ObjectKind| found.iter().filter(|told| told.what == what).collect::<Vec<_>>();
    let block = of(ObjectKind::Block)[0];
    assert_eq!(
        (block.how, block.name.as_str(), block.fields[0].field.as_str()),
        (DifferenceKind::Changed, "A", "rows")
    );
    assert_eq!((&block.fields[0].before, &block.fields[0].after), (&Some(2.into()), &Some(3.into())));
    assert_eq!(
        (of(ObjectKind::Penetration)[0].how, of(ObjectKind::Penetration)[0].name.as_str()),
        (DifferenceKind::Added, "P")
    );
    let site: Vec<&str> = of(ObjectKind::Site)[0].fields.iter().map(|field| field.field.as_str()).collect();
    assert_eq!(site, ["building.wind_mph"]);
    assert_eq!(of(ObjectKind::Part)[0].fields[0].field, "sides");
    // The hip over the east side is gone: it rests, and its neighbours extend further.
    let faces = of(ObjectKind::Face);
    assert!(faces.iter().any(|face| face.fields.iter().any(|field| field.field == "rests")));
    assert!(faces.iter().any(|face| face.fields.iter().any(|field| field.field == "outline")));
    assert!(of(ObjectKind::Kit).is_empty() && of(ObjectKind::Order).is_empty());
    assert_eq!(differences(&after, &after), []);
    let back = differences(&after, &before);
    assert_eq!(
        back.iter().find(|told| told.what == ObjectKind::Penetration).unwrap().how,
        DifferenceKind::Removed
    );
}

#[test]
fn a_put_face_of_a_part_changes_only_user_settings() {
    let job = job();
    let face = job.faces.iter().find(|face| face.from.is_some()).unwrap();
    let named = Edit::PutFace(crate::Face { name: "Street side".to_owned(), ..face.clone() });
    let text = edits_to_text([&named]).unwrap();
    assert!(!text.contains("outline"), "{text}");
    assert_eq!(done(&job, &text), apply(&job, &named).unwrap());
    let moved = Edit::PutFace(crate::Face { datum: face.datum + dvec2(0.1, 0.2), ..face.clone() });
    assert_eq!(done(&job, &edits_to_text([&moved]).unwrap()), apply(&job, &moved).unwrap());
    let courses = format!(
        r#"{{"change-face": {{"face": {}, "courses": {{"exposure": "6 in", "first": "5 in"}}}}}}"#,
        face.id
    );
    let after = done(&job, &courses);
    assert_eq!(after.face(face.id).unwrap().courses.exposure, Length::from_inches(6.0));
    assert_eq!(after.face(face.id).unwrap().outline, face.outline);
}

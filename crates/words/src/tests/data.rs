use super::*;

#[test]
fn words_are_found_without_accents() {
    assert_eq!(plain("Lista de VERIFICACIÓN"), "lista de verificacion");
}

#[test]
fn data_texts_are_looked_up_by_their_english_or_kept() {
    for say in DATA {
        assert_eq!(of_data(say.within(Language::ENGLISH)), say.within(Language::ENGLISH));
    }
    assert_eq!(of_data("Not known to anyone"), "Not known to anyone");
}

#[test]
fn a_face_heading_is_not_repeated() {
    for (name, english, spanish) in [
        ("South", "Face South", "Faldón South"),
        ("Face 1", "Face 1", "Face 1"),
        ("faldon 2", "faldon 2", "faldon 2"),
        ("Facelift", "Face Facelift", "Faldón Facelift"),
    ] {
        let heading = face_heading(name);
        assert_eq!(
            [heading.within(Language::ENGLISH), heading.within(Language::SPANISH)],
            [english, spanish]
        );
    }
    assert_eq!([block_heading("A"), block_heading("Bloque 2")].map(String::from), ["Block A", "Bloque 2"]);
}

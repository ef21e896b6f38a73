use super::*;

#[test]
fn words_are_found_without_accents() {
    assert_eq!(plain("Lista de VERIFICACIÓN"), "lista de verificacion");
}

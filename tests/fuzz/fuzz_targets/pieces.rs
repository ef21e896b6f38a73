#![no_main]
libfuzzer_sys::fuzz_target!(|bytes: &[u8]| chalkcourse_tests::hostile::pieces(bytes));

language-name = Français
language-code = fr

common-modules =
    { $count ->
        [one] { $count } module
       *[other] { $count } modules photovoltaïques
    }

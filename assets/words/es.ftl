language-name = Español
language-code = es

## common

common-modules =
    { $count ->
        [one] { $count } módulo
       *[other] { $count } módulos
    }

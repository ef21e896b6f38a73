language-name = English
language-code = en

## common

# $count (number)
common-modules =
    { $count ->
        [one] { $count } module
       *[other] { $count } modules
    }

//! Names that mean one thing in Britain and another in the US, or so many things that any
//! choice would be a guess: the author is asked which.

use super::names::singulars;

/// A name, and what it may mean: the usual senses in cookbooks of both countries (common
/// practice, no source).
const DOUBTFUL: [(&str, &[&str]); 21] = [
    ("corn flour", &["cornstarch", "maize flour"]),
    ("cider", &["apple juice", "hard cider"]),
    ("tomato purée", &["tomato paste", "canned tomato purée"]),
    ("tomato puree", &["tomato paste", "canned tomato purée"]),
    ("jelly", &["fruit jelly", "gelatine powder"]),
    ("corn", &["sweetcorn", "cornmeal"]),
    ("coconut", &["desiccated coconut", "flaked coconut", "fresh coconut"]),
    ("chocolate", &["semisweet chocolate", "unsweetened chocolate", "milk chocolate"]),
    ("syrup", &["golden syrup", "corn syrup", "maple syrup"]),
    ("fat", &["vegetable shortening", "lard", "butter"]),
    ("oil", &["vegetable oil", "olive oil", "rapeseed oil"]),
    ("nut", &["walnut", "almond", "mixed nuts"]),
    ("nutmeat", &["walnut", "pecan", "mixed nuts"]),
    ("nut meat", &["walnut", "pecan", "mixed nuts"]),
    ("stock", &["chicken stock", "beef stock", "vegetable stock"]),
    ("spice", &["mixed spice", "allspice", "cinnamon"]),
    ("pickle", &["gherkin", "chutney"]),
    ("biscuit", &["digestive biscuit", "gingersnap", "graham cracker"]),
    ("chicken", &["chicken breast", "cooked chicken", "chicken mince"]),
    ("sausage", &["pork sausage", "sausage meat", "frankfurter"]),
    ("bell pepper", &["green pepper", "red pepper", "yellow pepper"]),
];

/// What a doubtful name may mean; nothing for any other.
pub(super) fn senses(name: &str) -> &'static [&'static str] {
    let forms = singulars(name);
    let found = DOUBTFUL.iter().find(|(doubtful, _)| forms.iter().any(|f| f == doubtful));
    found.map_or(&[], |(_, senses)| senses)
}

#[cfg(test)]
mod tests {
    use super::super::Pantry;
    use super::*;

    /// Maize flour and its starch weigh and bind differently, cider with and without alcohol
    /// carries other allergens: neither is taken, both are offered.
    #[test]
    fn a_doubtful_name_is_asked_about_and_never_taken() {
        let pantry = Pantry::built_in();
        for (name, senses) in DOUBTFUL {
            assert!(pantry.find(name).is_none(), "{name} is taken");
            assert_eq!(pantry.suggestions(name), senses, "{name}");
            for sense in senses {
                let item = pantry.find(sense).map(|item| item.name.as_str());
                assert_eq!(item, Some(*sense));
            }
        }
        assert_eq!(pantry.find("cornflour").map(|i| i.name.as_str()), Some("cornstarch"));
    }
}

use super::*;
use crate::fault::Place;
use crate::measure::exact;

fn read(text: &str) -> Result<AmountLine, Fault> {
    let place = Place::new(&"a.md".into(), 0, text.len());
    let locale = Locale { comma: true, ..Locale::english() };
    line(&Placed::new(text.to_owned(), place), locale)
}

fn amount(text: &str) -> (Quantity, String) {
    let line = read(text).expect("a line");
    let Amount::Of(quantity) = line.amount else { panic!("an amount: {text}") };
    (quantity.value, line.ingredient.value.title().to_owned())
}

#[test]
fn lines_as_a_baker_writes_them() {
    let unit = |over, under, unit| Quantity::Unit(exact(over, under), unit);
    let cases = [
        ("500 g bread flour", unit(500, 1, Unit::Gram), "bread flour"),
        ("500g bread flour", unit(500, 1, Unit::Gram), "bread flour"),
        ("1,5 kg bread flour", unit(3, 2, Unit::Kilogram), "bread flour"),
        ("1½ cups sugar", unit(3, 2, Unit::Cup), "sugar"),
        ("1 1/2 tsp fine salt", unit(3, 2, Unit::Teaspoon), "fine salt"),
        ("2 fl oz lemon juice", unit(2, 1, Unit::FluidOunce), "lemon juice"),
        ("2 % fine salt", unit(2, 1, Unit::Percent), "fine salt"),
        ("1 cup of sugar", unit(1, 1, Unit::Cup), "sugar"),
        ("3 egg yolks", Quantity::Pieces(exact(3, 1), String::new()), "egg yolks"),
        (
            "1 batch [layered dough](layered-dough.md)",
            Quantity::Batches(exact(1, 1)),
            "layered dough",
        ),
    ];
    for (text, quantity, name) in cases {
        assert_eq!(amount(text), (quantity, name.to_owned()), "{text}");
    }
}

#[test]
fn notes_seconds_and_temperatures() {
    let line = read("225 g (1 cup) butter, cold, in cubes").expect("a line");
    assert_eq!(line.note.as_deref(), Some("cold, in cubes"));
    assert_eq!(
        line.also.map(|also| also.value),
        Some(Quantity::Unit(exact(1, 1), Unit::Cup))
    );
    assert_eq!(line.ingredient.place.start(), 14);
    let line = read("300 g water at 27 °C").expect("a line");
    assert_eq!(line.at, Some(Temperature::celsius(exact(27, 1))));
    assert_eq!(line.ingredient.value.title(), "water");
}

#[test]
fn lines_without_weight() {
    for text in
        ["bread flour, for dusting", "bread flour for dusting", "fine salt, to taste"]
    {
        let line = read(text).expect("a line");
        assert!(matches!(line.amount, Amount::Free(_)), "{text}");
    }
    for (text, words, name) in [
        ("a pinch of salt", "a pinch", "salt"),
        ("10 drops of lemon essence", "10 drops", "lemon essence"),
        ("a little salt", "a little", "salt"),
        ("water to mix", "to mix", "water"),
        (
            "sour milk to moisten (about 1½ cups)",
            "to moisten (about 1½ cups)",
            "sour milk",
        ),
    ] {
        let line = read(text).expect("a line");
        assert_eq!(line.ingredient.value.title(), name, "{text}");
        assert!(matches!(line.amount, Amount::Free(said) if said == words), "{text}");
    }
    for text in ["butter", "?? butter", "500 g", "5 g [x](../x.md)", "1 heaped tsp salt"]
    {
        assert!(read(text).is_err(), "{text}");
    }
}

#[test]
fn amounts_may_stand_behind_or_count_a_part() {
    for (text, count, name) in [
        ("the whites of 5 eggs beaten stiff", 5, "egg white"),
        ("Yolks 2 eggs", 2, "egg yolk"),
        ("the juice of one orange", 1, "orange juice"),
        ("grated rind of 2 lemons", 2, "lemon zest"),
    ] {
        let pieces = Quantity::Pieces(exact(count, 1), String::new());
        assert_eq!(amount(text), (pieces, name.to_owned()), "{text}");
    }
    let ounces = Quantity::Unit(exact(3, 2), Unit::Ounce);
    let line = "A piece of butter, one and a half ounces";
    assert_eq!(amount(line), (ounces, "butter".to_owned()));
    let spoon = Quantity::Unit(exact(1, 1), Unit::Cup);
    assert_eq!(amount("Milk, 1 c. sc"), (spoon, "Milk".to_owned()));
}

#[test]
fn remarks_in_brackets_are_notes() {
    let line = read("one cup of white flour (sifted), warm").expect("a line");
    assert_eq!(line.ingredient.value.title(), "white flour");
    assert_eq!(line.note.as_deref(), Some("sifted, warm"));
    let line = read("1 cup (2 sticks) butter").expect("a line");
    assert_eq!(line.note.as_deref(), Some("2 sticks"));
    let line = read("3 oz. (6 tbsp.) salt").expect("a line");
    assert!(line.also.is_some());
}

#[test]
fn shares() {
    let (half, name) = share("half of the butter");
    assert_eq!((half.part, name), (exact(1, 2), "butter"));
    let (all, name) = share("cream of tartar");
    assert_eq!((all.part, name), (exact(1, 1), "cream of tartar"));
    assert_eq!(share("30 % of the flour").0.part, exact(3, 10));
    for (text, part, name) in [
        ("la moitié de la pâte", exact(1, 2), "pâte"),
        ("die Hälfte der Butter", exact(1, 2), "Butter"),
        ("un tercio de la masa", exact(1, 3), "masa"),
        ("バターの半量", exact(1, 2), "バター"),
        ("crème de tartre", exact(1, 1), "crème de tartre"),
        ("der Teig", exact(1, 1), "der Teig"),
    ] {
        let (found, of) = share(text);
        assert_eq!((found.part, of), (part, name), "{text}");
    }
}

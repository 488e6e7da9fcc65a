package rigbrief.part;

import java.util.Optional;
import java.util.OptionalInt;
import rigbrief.quantity.Mass;

/**
 * What parts of every kind carry: identity, look and guarantee.
 *
 * @param id stable identity within the catalogue, kebab-case
 * @param maker who makes it
 * @param model what the maker calls it
 * @param makerNumber the maker's order number; empty when unknown
 * @param gtin GS1 item number with a verified check digit; empty when unknown
 * @param colour main colour; empty where the part has none that shows
 * @param lighting whether it lights up
 * @param mass mass as sold, without packaging
 * @param warrantyYears the maker's guarantee in years; empty when unknown
 */
public record Listing(
        String id,
        String maker,
        String model,
        String makerNumber,
        String gtin,
        Optional<Colour> colour,
        Lighting lighting,
        Fact<Mass> mass,
        OptionalInt warrantyYears) {

    /** Reads the columns that parts of every kind share. */
    public static Listing from(Cells cells) {
        return new Listing(
                cells.id("id"),
                cells.text("maker"),
                cells.text("model"),
                cells.textOr("maker_number", ""),
                cells.gtin("gtin"),
                cells.maybe("colour", Colour.class),
                cells.choiceOr("lighting", Lighting.NONE),
                cells.mass("mass_g", 1, 60_000),
                cells.maybeWhole("warranty_years", 0, 25));
    }

    /** Maker and model, as a person would say it. */
    public String name() {
        return maker + " " + model;
    }
}

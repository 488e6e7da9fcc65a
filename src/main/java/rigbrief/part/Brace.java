package rigbrief.part;

import rigbrief.quantity.Mass;

/**
 * A brace that carries the free end of a graphics card.
 *
 * @param listing identity, look and guarantee, as in every part
 * @param maxMass heaviest card it carries
 * @param form what it stands on
 */
public record Brace(Listing listing, Fact<Mass> maxMass, BraceForm form) implements Part {
    static Brace from(Listing listing, Cells cells) {
        return new Brace(
                listing,
                cells.mass("max_mass_g", 100, 20_000),
                cells.choiceOr("fits", BraceForm.FLOOR));
    }

    @Override
    public Kind kind() {
        return Kind.BRACE;
    }
}

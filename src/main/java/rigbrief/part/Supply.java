package rigbrief.part;

import rigbrief.quantity.Length;

/**
 * A power supply.
 *
 * @param listing identity, look and guarantee, as in every part
 * @param form body
 * @param length depth of the body
 * @param watts rating in watts
 * @param efficiency 80 PLUS level
 * @param guide design guide it follows
 * @param plugs connectors on its cables
 * @param modular which cables come off
 * @param dba20 level at 20 % load in dB(A)
 * @param dba50 level at 50 % load in dB(A)
 * @param dba100 level at full load in dB(A)
 */
public record Supply(
        Listing listing,
        SupplyForm form,
        Fact<Length> length,
        int watts,
        Efficiency efficiency,
        Guide guide,
        Fact<Tally<Plug>> plugs,
        Modularity modular,
        double dba20,
        double dba50,
        double dba100)
        implements Part {
    static Supply from(Listing listing, Cells cells) {
        return new Supply(
                listing,
                cells.choice("form", SupplyForm.class),
                cells.length("length_mm", 80, 300),
                cells.whole("watts", 100, 3_000),
                cells.choiceOr("efficiency", Efficiency.NONE),
                cells.choiceOr("guide", Guide.ATX2),
                cells.tally("connectors", Plug.class),
                cells.choiceOr("modular", Modularity.NONE),
                cells.numberOr("dba_20", 0, 60, 20),
                cells.numberOr("dba_50", 0, 60, 24),
                cells.numberOr("dba_100", 0, 70, 34));
    }

    @Override
    public Kind kind() {
        return Kind.SUPPLY;
    }
}

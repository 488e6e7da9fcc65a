package rigbrief.part;

/**
 * A wireless network card.
 *
 * @param listing identity, look and guarantee, as in every part
 * @param place where it goes
 * @param standard the standard it speaks
 */
public record Wireless(Listing listing, CardPlace place, WirelessStandard standard)
        implements Part {
    static Wireless from(Listing listing, Cells cells) {
        return new Wireless(
                listing,
                cells.choice("slot", CardPlace.class),
                cells.choice("standard", WirelessStandard.class));
    }

    @Override
    public Kind kind() {
        return Kind.WIRELESS;
    }
}

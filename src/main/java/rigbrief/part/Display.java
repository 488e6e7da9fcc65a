package rigbrief.part;

import java.util.List;

/**
 * A display.
 *
 * @param listing identity, look and guarantee, as in every part
 * @param resolution picture size
 * @param refreshHz highest refresh rate in Hz
 * @param vrrLowHz lowest variable refresh rate in Hz; 0 when it has none
 * @param bitsPerColour bits per colour
 * @param inputs inputs
 */
public record Display(
        Listing listing,
        Resolution resolution,
        int refreshHz,
        int vrrLowHz,
        int bitsPerColour,
        List<Port> inputs)
        implements Part {
    public Display {
        inputs = List.copyOf(inputs);
    }

    static Display from(Listing listing, Cells cells) {
        return new Display(
                listing,
                cells.parsed("resolution", Resolution::read),
                cells.whole("refresh_hz", 24, 1_000),
                cells.wholeOr("vrr_low_hz", 0, 200, 0),
                cells.wholeOr("bits_per_colour", 6, 12, 8),
                cells.list("inputs", Port::read));
    }

    @Override
    public Kind kind() {
        return Kind.DISPLAY;
    }
}

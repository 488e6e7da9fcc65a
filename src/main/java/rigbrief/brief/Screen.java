package rigbrief.brief;

import java.util.List;
import java.util.Optional;
import rigbrief.part.Port;
import rigbrief.part.Resolution;

/**
 * The picture the client will look at.
 *
 * @param resolution picture size
 * @param refreshHz refresh rate wanted, in Hz
 * @param bitsPerColour bits per colour
 * @param inputs inputs of the client's own display; empty when a display is to be bought
 * @param count how many such displays
 * @param buy whether a display is part of the order
 * @param part id of the display wanted, when one is named
 */
public record Screen(
        Resolution resolution,
        int refreshHz,
        int bitsPerColour,
        List<Port> inputs,
        int count,
        boolean buy,
        Optional<String> part) {
    public Screen {
        inputs = List.copyOf(inputs);
    }
}

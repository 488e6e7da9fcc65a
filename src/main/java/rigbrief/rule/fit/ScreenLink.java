package rigbrief.rule.fit;

import rigbrief.model.link.LinkResult;
import rigbrief.part.Resolution;

/**
 * A picture with the link that carries it, or does not.
 *
 * @param resolution picture size
 * @param refreshHz refresh rate in Hz
 * @param bitsPerColour bits per colour
 * @param result both rates, and whether it fits
 */
public record ScreenLink(
        Resolution resolution, int refreshHz, int bitsPerColour, LinkResult result) {}

package rigbrief.assembly.handover;

import java.util.List;
import rigbrief.quantity.Money;

/**
 * A step that fits the machine as it stands, found by solving again with more money.
 *
 * @param title what it is about, such as "faster graphics"
 * @param changes what is bought, and what it takes the place of
 * @param cost what that costs today: parts, delivery and tax, no assembly
 * @param gains what gets better, with figures before and after
 * @param losses which work gets slower, with figures; usually none
 * @param proven whether it is proven that less money doesn't do it
 */
public record Upgrade(
        String title,
        List<String> changes,
        Money cost,
        List<String> gains,
        List<String> losses,
        boolean proven) {
    public Upgrade {
        changes = List.copyOf(changes);
        gains = List.copyOf(gains);
        losses = List.copyOf(losses);
    }
}

package rigbrief.part;

import java.util.ArrayList;
import java.util.List;

/**
 * A side of the case that takes a radiator, written {@code front:360|280@60}.
 *
 * @param place which side
 * @param sizesMm radiator length classes in mm
 * @param thicknessMm thickest radiator without its fans, in mm
 */
public record RadiatorPosition(Place place, List<Integer> sizesMm, int thicknessMm) {
    public RadiatorPosition {
        sizesMm = List.copyOf(sizesMm);
    }

    static RadiatorPosition read(String entry) throws Cells.Malformed {
        if (!entry.matches("[a-z]+:[0-9]{3}(?:[|][0-9]{3})*+@[0-9]{2}")) {
            throw new Cells.Malformed(
                    "a side, radiator sizes and a thickness in mm",
                    "write front:360|280@60;top:240@30");
        }
        int colon = entry.indexOf(':');
        int at = entry.indexOf('@');
        List<Integer> sizes = new ArrayList<>();
        for (String size : entry.substring(colon + 1, at).split("[|]")) {
            sizes.add(Integer.parseInt(size));
        }
        return new RadiatorPosition(
                Words.read(entry.substring(0, colon), Place.class),
                sizes,
                Integer.parseInt(entry.substring(at + 1)));
    }
}

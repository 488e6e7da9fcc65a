package rigbrief.part;

import java.util.List;

/**
 * An operating-system licence.
 *
 * @param listing identity, look and guarantee, as in every part
 * @param requires firmware features it requires of board or processor
 */
public record OperatingSystem(Listing listing, List<String> requires) implements Part {
    public OperatingSystem {
        requires = List.copyOf(requires);
    }

    static OperatingSystem from(Listing listing, Cells cells) {
        return new OperatingSystem(listing, cells.listOrNone("requires", entry -> entry));
    }

    @Override
    public Kind kind() {
        return Kind.SYSTEM;
    }
}

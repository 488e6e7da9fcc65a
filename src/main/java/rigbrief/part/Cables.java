package rigbrief.part;

import java.util.List;

/**
 * A set of cables in one colour.
 *
 * @param listing identity, look and guarantee, as in every part
 * @param covers connectors it covers
 */
public record Cables(Listing listing, List<Plug> covers) implements Part {
    public Cables {
        covers = List.copyOf(covers);
    }

    static Cables from(Listing listing, Cells cells) {
        return new Cables(listing, cells.list("covers", entry -> Words.read(entry, Plug.class)));
    }

    @Override
    public Kind kind() {
        return Kind.CABLES;
    }
}

package rigbrief.assess;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import rigbrief.brief.Brief;
import rigbrief.catalogue.Catalogue;
import rigbrief.catalogue.Offer;
import rigbrief.catalogue.Supplier;
import rigbrief.part.Part;

/** The offers a brief's terms allow: its suppliers, its lead time. Stock is asked per quantity. */
public final class Offers {
    private static final Offer[] NOBODY = {};

    private final Brief brief;
    private final Catalogue catalogue;
    private final List<Supplier> suppliers;
    private final Map<Part, Offer[][]> cheapest = new IdentityHashMap<>();
    private final Map<Part, Map<Integer, Offer[]>> byUnits = new IdentityHashMap<>();

    Offers(Brief brief, Catalogue catalogue) {
        this.brief = brief;
        this.catalogue = catalogue;
        List<Supplier> allowed = new ArrayList<>();
        for (Supplier supplier : catalogue.suppliers()) {
            if (brief.buying().suppliers().isEmpty()
                    || brief.buying().suppliers().contains(supplier.id())) {
                allowed.add(supplier);
            }
        }
        this.suppliers = List.copyOf(allowed);
    }

    /** Suppliers the brief allows, in the catalogue's order. */
    public List<Supplier> suppliers() {
        return suppliers;
    }

    /**
     * One entry per allowed supplier, in their order: the supplier's cheapest offer with stock for
     * all machines, or null. Not to be changed.
     */
    public Offer[] of(Part part, int piecesPerMachine) {
        Offer[][] byPieces = cheapest.get(part);
        if (byPieces == null || byPieces.length <= piecesPerMachine) {
            byPieces = longer(byPieces, piecesPerMachine);
            cheapest.put(part, byPieces);
        }
        if (byPieces[piecesPerMachine] == null) {
            byPieces[piecesPerMachine] = cheapest(part, piecesPerMachine);
        }
        return byPieces[piecesPerMachine];
    }

    /** Most parts are asked for in one number of packs, and a catalogue has many parts. */
    private static Offer[][] longer(Offer[][] byPieces, int piecesPerMachine) {
        return byPieces == null
                ? new Offer[piecesPerMachine + 1][]
                : Arrays.copyOf(byPieces, piecesPerMachine + 1);
    }

    /**
     * The same for a number of packs that all machines together still want. Not to be changed.
     *
     * @param units packs for all machines, at least 1
     */
    public Offer[] ofUnits(Part part, int units) {
        return byUnits.computeIfAbsent(part, any -> new HashMap<>())
                .computeIfAbsent(units, wanted -> cheapestOf(part, wanted));
    }

    private Offer[] cheapest(Part part, int piecesPerMachine) {
        return cheapestOf(part, Math.multiplyExact(piecesPerMachine, brief.quantity()));
    }

    private Offer[] cheapestOf(Part part, int wanted) {
        Offer[] best = new Offer[suppliers.size()];
        boolean any = false;
        for (Offer offer : allowed(part)) {
            int s = index(offer.supplier());
            if (offer.stock() >= wanted
                    && (best[s] == null || offer.price().compareTo(best[s].price()) < 0)) {
                best[s] = offer;
                any = true;
            }
        }
        return any ? best : NOBODY;
    }

    private List<Offer> allowed(Part part) {
        List<Offer> allowed = new ArrayList<>();
        for (Offer offer : catalogue.offers(part.id())) {
            boolean soonEnough =
                    brief.buying().withinDays().isEmpty()
                            || offer.leadDays() <= brief.buying().withinDays().getAsInt();
            if (soonEnough && index(offer.supplier()) >= 0) {
                allowed.add(offer);
            }
        }
        return allowed;
    }

    private int index(String supplier) {
        for (int i = 0; i < suppliers.size(); i++) {
            if (suppliers.get(i).id().equals(supplier)) {
                return i;
            }
        }
        return -1;
    }
}

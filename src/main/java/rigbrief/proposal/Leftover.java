package rigbrief.proposal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rigbrief.assess.Cost;
import rigbrief.audit.Audit;
import rigbrief.catalogue.Catalogue;
import rigbrief.catalogue.Offer;
import rigbrief.part.Kind;
import rigbrief.part.Part;

/** What an order leaves of the stock of a catalogue. */
final class Leftover {
    private Leftover() {}

    /** The catalogue after so many machines were bought as an audit says. */
    static Catalogue of(Catalogue catalogue, Audit audit, int machines) {
        Map<Offer, Integer> taken = new HashMap<>();
        for (Cost.Line line : audit.cost().lines()) {
            String part = audit.build().part(line.slot()).id();
            catalogue.offers(part).stream()
                    .filter(offer -> offer.supplier().equals(line.supplier()))
                    .filter(offer -> offer.price().minorUnits() == line.unitMinor())
                    .findFirst()
                    .ifPresent(offer -> taken.merge(offer, line.pieces() * machines, Integer::sum));
        }
        List<Part> parts = new ArrayList<>();
        List<Offer> offers = new ArrayList<>();
        for (Kind kind : Kind.values()) {
            for (Part part : catalogue.parts(kind)) {
                parts.add(part);
                catalogue
                        .offers(part.id())
                        .forEach(offer -> offers.add(left(offer, taken.getOrDefault(offer, 0))));
            }
        }
        return new Catalogue(
                catalogue.name(),
                catalogue.currency(),
                catalogue.asOf(),
                catalogue.digest(),
                catalogue.reference(),
                catalogue.suppliers(),
                parts,
                offers,
                catalogue.workloads());
    }

    private static Offer left(Offer offer, int taken) {
        return new Offer(
                offer.part(),
                offer.supplier(),
                offer.price(),
                Math.max(0, offer.stock() - taken),
                offer.leadDays(),
                offer.asOf());
    }
}

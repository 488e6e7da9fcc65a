package rigbrief.proposal.replace;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import rigbrief.build.BuildLine;
import rigbrief.build.BuildRecord;
import rigbrief.catalogue.Catalogue;
import rigbrief.catalogue.Offer;
import rigbrief.part.Kind;
import rigbrief.part.Part;
import rigbrief.quantity.Money;

/** A catalogue with the offers that trouble leaves of it. */
final class OffersLeft {
    private OffersLeft() {}

    /**
     * Unavailable parts have no offer left. A new price holds where the build was to buy the part,
     * and for all offers of a part that the build does not name a supplier for.
     */
    static Catalogue of(Catalogue all, Trouble trouble, BuildRecord build) {
        if (trouble.unavailable().isEmpty() && trouble.prices().isEmpty()) {
            return all;
        }
        List<Part> parts = new ArrayList<>();
        List<Offer> offers = new ArrayList<>();
        for (Kind kind : Kind.values()) {
            for (Part part : all.parts(kind)) {
                parts.add(part);
                if (!trouble.unavailable().contains(part.id())) {
                    offers.addAll(priced(all.offers(part.id()), trouble, build));
                }
            }
        }
        return new Catalogue(
                all.name(),
                all.currency(),
                all.asOf(),
                all.digest(),
                all.reference(),
                all.suppliers(),
                parts,
                offers,
                all.workloads());
    }

    private static List<Offer> priced(List<Offer> offers, Trouble trouble, BuildRecord build) {
        if (offers.isEmpty() || !trouble.prices().containsKey(offers.get(0).part())) {
            return offers;
        }
        Money price = trouble.prices().get(offers.get(0).part());
        Set<String> raisers = suppliers(build, offers.get(0).part());
        boolean known = offers.stream().anyMatch(offer -> raisers.contains(offer.supplier()));
        List<Offer> priced = new ArrayList<>();
        for (Offer offer : offers) {
            boolean raised = !known || raisers.contains(offer.supplier());
            priced.add(raised ? at(offer, price) : offer);
        }
        return priced;
    }

    private static Offer at(Offer offer, Money price) {
        return new Offer(
                offer.part(),
                offer.supplier(),
                price,
                offer.stock(),
                offer.leadDays(),
                offer.asOf());
    }

    private static Set<String> suppliers(BuildRecord build, String part) {
        Set<String> suppliers = new LinkedHashSet<>();
        for (BuildLine line : build.lines()) {
            if (line.part().id().equals(part)) {
                line.supplier().ifPresent(suppliers::add);
            }
        }
        return suppliers;
    }
}

package rigbrief.proposal.account;

import java.util.ArrayList;
import java.util.List;
import rigbrief.brief.Brief;
import rigbrief.build.BuildRecord;
import rigbrief.catalogue.Catalogue;
import rigbrief.explain.Derivation;
import rigbrief.explain.Explanation;
import rigbrief.explain.Topic;
import rigbrief.proposal.Buildable;

/** Explains how many machines today's stock allows. */
final class BuildableAccount {
    private BuildableAccount() {}

    static List<Topic> topics(Brief brief, Catalogue catalogue, BuildRecord filed) {
        return List.of(
                topic(
                        "from-one-supplier-a-part",
                        "each part from one supplier",
                        brief,
                        catalogue,
                        filed),
                topic(
                        "with-split-orders",
                        "orders split between suppliers",
                        brief,
                        catalogue,
                        filed));
    }

    private static Topic topic(
            String kind, String words, Brief brief, Catalogue catalogue, BuildRecord filed) {
        String number = "buildable-today." + kind;
        String title = "Machines that can be built with today's offers, " + words;
        return new Topic(
                number,
                title,
                () ->
                        explained(
                                number,
                                title,
                                brief,
                                catalogue,
                                filed,
                                kind.equals("with-split-orders")));
    }

    private static Explanation explained(
            String number,
            String title,
            Brief brief,
            Catalogue catalogue,
            BuildRecord filed,
            boolean split) {
        Derivation how =
                new Derivation(
                        number,
                        title,
                        "the least over all parts of (units ordered or here + units on offer) /"
                                + " units in a machine, rounded down; at most the machines wanted",
                        "stock of the catalogue's offers, as of " + catalogue.asOf());
        List<Object> values = new ArrayList<>(List.of(brief.quantity()));
        how.fact("machines wanted", brief.quantity(), "", "brief, quantity");
        StringBuilder template = new StringBuilder("min({}");
        String from = split ? "offers of all suppliers used" : "the offer with the largest stock";
        for (Buildable.Stock stock : Buildable.stocks(filed, brief, catalogue, split)) {
            how.fact(stock.part().id() + ", on offer", stock.stock(), "", "catalogue, " + from);
            if (stock.have() > 0) {
                how.fact(stock.part().id() + ", ordered or here", stock.have(), "", "the build");
            }
            template.append(", floor(({} + {}) / {})");
            values.addAll(List.of(stock.have(), stock.stock(), stock.pieces()));
        }
        if (brief.buying().atMostSuppliers().isPresent()) {
            how.remark(
                    "of the sets of at most "
                            + brief.buying().atMostSuppliers().getAsInt()
                            + " suppliers the one that allows most counts");
        }
        if (brief.buying().withinDays().isPresent()) {
            how.remark("only offers that come within the days that the brief allows count");
        }
        Buildable buildable = Buildable.of(filed, brief, catalogue);
        return how.gives(
                split ? buildable.split() : buildable.whole(),
                0,
                "",
                template.append(")").toString(),
                values.toArray());
    }
}

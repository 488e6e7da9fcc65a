package rigbrief.proposal.need;

import java.util.List;
import java.util.function.UnaryOperator;
import rigbrief.catalogue.Catalogue;
import rigbrief.catalogue.Supplier;
import rigbrief.catalogue.Workload;
import rigbrief.part.Part;
import rigbrief.wording.Phrase;

/** What the ids of a brief are called by people; an id that the catalogue lacks stays as it is. */
final class Names {
    private Names() {}

    static String workload(Catalogue catalogue, String id) {
        return catalogue.workload(id).map(Workload::title).orElse(id);
    }

    static Phrase workloads(Catalogue catalogue, List<String> ids) {
        return joined(ids, id -> workload(catalogue, id));
    }

    static String part(Catalogue catalogue, String id) {
        return catalogue.part(id).map(Part::name).orElse(id);
    }

    static Phrase suppliers(Catalogue catalogue, List<String> ids) {
        return joined(
                ids,
                id ->
                        catalogue.suppliers().stream()
                                .filter(supplier -> supplier.id().equals(id))
                                .map(Supplier::name)
                                .findFirst()
                                .orElse(id));
    }

    private static Phrase joined(List<String> ids, UnaryOperator<String> name) {
        return Phrase.data(String.join("; ", ids.stream().map(name).toList()));
    }
}

package rigbrief.catalogue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Currency;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rigbrief.part.Kind;
import rigbrief.part.Part;

/**
 * Everything that can be bought, and everything that may be run.
 *
 * <p>Immutable. Parts keep the order of their files, offers that of the offers file; nothing here
 * depends on hash order.
 */
public final class Catalogue {
    private final String name;
    private final Currency currency;
    private final LocalDate asOf;
    private final String digest;
    private final Reference reference;
    private final List<Supplier> suppliers;
    private final Map<Kind, List<Part>> parts = new EnumMap<>(Kind.class);
    private final Map<String, Part> partById = new HashMap<>();
    private final Map<String, List<Offer>> offersByPart = new HashMap<>();
    private final Map<String, Workload> workloads = new LinkedHashMap<>();
    private final int offerCount;

    /**
     * A catalogue.
     *
     * @param digest {@code sha256:} and the hexadecimal digest of the files it was read from
     */
    public Catalogue(
            String name,
            Currency currency,
            LocalDate asOf,
            String digest,
            Reference reference,
            List<Supplier> suppliers,
            List<? extends Part> parts,
            List<Offer> offers,
            List<? extends Workload> workloads) {
        this.name = name;
        this.currency = currency;
        this.asOf = asOf;
        this.digest = digest;
        this.reference = reference;
        this.suppliers = List.copyOf(suppliers);
        for (Kind kind : Kind.values()) {
            this.parts.put(kind, new ArrayList<>());
        }
        for (Part part : parts) {
            this.parts.get(part.kind()).add(part);
            partById.put(part.id(), part);
        }
        this.parts.replaceAll((kind, list) -> Collections.unmodifiableList(list));
        for (Offer offer : offers) {
            offersByPart.computeIfAbsent(offer.part(), id -> new ArrayList<>(2)).add(offer);
        }
        for (Workload workload : workloads) {
            this.workloads.put(workload.id(), workload);
        }
        this.offerCount = offers.size();
    }

    /** Its name. */
    public String name() {
        return name;
    }

    /** Currency of every offer. */
    public Currency currency() {
        return currency;
    }

    /** Its date; stands in for today wherever age matters. */
    public LocalDate asOf() {
        return asOf;
    }

    /** {@code sha256:} and the digest of its files. */
    public String digest() {
        return digest;
    }

    /** Conditions under which its figures hold. */
    public Reference reference() {
        return reference;
    }

    /** Suppliers in file order. */
    public List<Supplier> suppliers() {
        return suppliers;
    }

    /** Parts of a kind, in file order. */
    public List<Part> parts(Kind kind) {
        return parts.get(kind);
    }

    /** A part by id. */
    public Optional<Part> part(String id) {
        return Optional.ofNullable(partById.get(id));
    }

    /** Offers for a part, in file order; none when it can't be bought. */
    public List<Offer> offers(String part) {
        return Collections.unmodifiableList(offersByPart.getOrDefault(part, List.of()));
    }

    /** A workload by id. */
    public Optional<Workload> workload(String id) {
        return Optional.ofNullable(workloads.get(id));
    }

    /** All workloads, in file order. */
    public List<Workload> workloads() {
        return List.copyOf(workloads.values());
    }

    /** Number of parts of all kinds. */
    public int partCount() {
        return partById.size();
    }

    /** Number of offers. */
    public int offerCount() {
        return offerCount;
    }
}

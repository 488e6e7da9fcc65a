package rigbrief.pricelist;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import rigbrief.catalogue.Catalogue;
import rigbrief.part.Kind;
import rigbrief.part.Part;

/**
 * Finds parts by what names them exactly: id, maker's number, item number.
 *
 * <p>A maker's number is compared without regard to capitals and to blanks around it. Item numbers
 * of 8, 12, 13 and 14 digits are compared filled up with zeros in front (GS1 General
 * Specifications, section 3: shorter ones are right-justified in 14 digits).
 */
final class PartFinder {
    private static final int GTIN_DIGITS = 14;

    private final Catalogue catalogue;
    private final Map<String, List<Part>> byNumber = new HashMap<>();
    private final Map<String, List<Part>> byGtin = new HashMap<>();

    PartFinder(Catalogue catalogue) {
        this.catalogue = catalogue;
        for (Part part : all(catalogue)) {
            put(byNumber, number(part.listing().makerNumber()), part);
            put(byGtin, gtin(part.listing().gtin()), part);
        }
    }

    /** All parts, kind by kind. */
    static List<Part> all(Catalogue catalogue) {
        List<Part> all = new ArrayList<>(catalogue.partCount());
        for (Kind kind : Kind.values()) {
            all.addAll(catalogue.parts(kind));
        }
        return all;
    }

    private static void put(Map<String, List<Part>> index, String key, Part part) {
        if (!key.isEmpty()) {
            index.computeIfAbsent(key, any -> new ArrayList<>(1)).add(part);
        }
    }

    private static String number(String text) {
        return text.strip().toUpperCase(Locale.ROOT);
    }

    private static String gtin(String text) {
        return text.isEmpty() ? "" : "0".repeat(Math.max(0, GTIN_DIGITS - text.length())) + text;
    }

    /** The parts that a row's id names: one or none. */
    List<Part> byId(PriceRow row) {
        return catalogue.part(row.id()).map(List::of).orElse(List.of());
    }

    /** The parts that a row's maker number names. */
    List<Part> byNumber(PriceRow row) {
        return byNumber.getOrDefault(number(row.number()), List.of());
    }

    /** The parts that a row's item number names. */
    List<Part> byGtin(PriceRow row) {
        return byGtin.getOrDefault(gtin(row.gtin()), List.of());
    }

    /** All parts that a row names, whichever way. */
    Set<Part> named(PriceRow row) {
        Set<Part> named = new LinkedHashSet<>(byId(row));
        named.addAll(byNumber(row));
        named.addAll(byGtin(row));
        return named;
    }
}

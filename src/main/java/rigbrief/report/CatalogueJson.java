package rigbrief.report;

import rigbrief.catalogue.Catalogue;

/** Which catalogue an answer was made with, in JSON. */
final class CatalogueJson {
    private CatalogueJson() {}

    /** Adds the field {@code catalogue}. */
    static void write(JsonPage json, Catalogue catalogue) {
        json.object(
                "catalogue",
                of ->
                        of.field("name", catalogue.name())
                                .field("digest", catalogue.digest())
                                .field("parts", catalogue.partCount())
                                .field("offers", catalogue.offerCount())
                                .field("as-of", catalogue.asOf().toString()));
    }
}

package rigbrief.world;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;

/**
 * Invented names, each used once.
 *
 * <p>Plants and birds with endings of English place names; endings that occur in names of real
 * chips (bridge, lake, mont, ridge, well, wood) are left out.
 */
final class Names {
    private static final List<String> FIRST =
            List.of(
                    "Alder",
                    "Barley",
                    "Bilber",
                    "Bracken",
                    "Briar",
                    "Burdock",
                    "Campion",
                    "Celan",
                    "Clover",
                    "Comfrey",
                    "Cowslip",
                    "Curlew",
                    "Dapple",
                    "Dunlin",
                    "Fallow",
                    "Fescue",
                    "Figwort",
                    "Furze",
                    "Garnel",
                    "Gorse",
                    "Grebe",
                    "Harebell",
                    "Hazel",
                    "Juniper",
                    "Kestle",
                    "Lapwing",
                    "Linnet",
                    "Madder",
                    "Mallow",
                    "Marram",
                    "Meadow",
                    "Milfoil",
                    "Mossel",
                    "Myrtle",
                    "Nettle",
                    "Osier",
                    "Pipit",
                    "Plover",
                    "Quince",
                    "Ragwort",
                    "Rowan",
                    "Rush",
                    "Sedge",
                    "Siskin",
                    "Sorrel",
                    "Spindle",
                    "Tansy",
                    "Teasel",
                    "Thistle",
                    "Thrift",
                    "Vetch",
                    "Whin",
                    "Woad",
                    "Yarrow");

    private static final List<String> LAST =
            List.of(
                    "bourne", "brook", "combe", "cote", "croft", "dene", "fold", "garth", "ham",
                    "holm", "hythe", "ley", "mere", "more", "ness", "rigg", "shaw", "stead", "stow",
                    "thorpe", "toft", "wick", "worth", "wyke");

    private static final int TRIES = 3;

    private final Set<String> ids = new HashSet<>();
    private long gtins;

    /** A name: what stands before the blank is the maker's, what stands behind is new. */
    record Name(String id, String model) {}

    /** Keeps an id from being given to another. */
    void take(String id) {
        ids.add(id);
    }

    /**
     * A new name after another: its first word is replaced, and a mark is added where too many bear
     * the like.
     */
    Name after(String maker, String model, Random random) {
        int blank = model.indexOf(' ');
        String rest = blank < 0 ? "" : model.substring(blank);
        for (int tries = 0; ; tries++) {
            String word =
                    FIRST.get(random.nextInt(FIRST.size())) + LAST.get(random.nextInt(LAST.size()));
            String mark = tries < TRIES ? "" : " " + (2 + random.nextInt(998));
            String fresh = word + rest + mark;
            String id =
                    (maker + " " + fresh)
                            .toLowerCase(Locale.ROOT)
                            .replaceAll("[^a-z0-9.]+", "-")
                            .replaceAll("-$", "");
            if (ids.add(id)) {
                return new Name(id, fresh);
            }
        }
    }

    /**
     * The next item number: prefix 2, which GS1 leaves to whoever needs numbers of his own, eleven
     * digits that never repeat, and the check digit.
     *
     * <p>Source: GS1 General Specifications, sections 1.4.2 and 7.9.
     */
    String gtin() {
        // A step that shares no factor with 10^11 visits every number once.
        gtins = (gtins + 38_196_601_127L) % 100_000_000_000L;
        String digits = "2%011d".formatted(gtins);
        int sum = 0;
        for (int i = 0; i < digits.length(); i++) {
            sum += (digits.charAt(i) - '0') * (i % 2 == 0 ? 1 : 3);
        }
        return digits + (10 - sum % 10) % 10;
    }

    /** An order number: capitals of maker and model, and figures. */
    static String makerNumber(String maker, String model, Random random) {
        String capitals = (maker + model).replaceAll("[^A-Z]", "");
        String letters = capitals.substring(0, Math.min(3, capitals.length()));
        return letters + "-" + (10_000 + random.nextInt(90_000));
    }
}

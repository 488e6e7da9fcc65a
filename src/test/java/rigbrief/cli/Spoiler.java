package rigbrief.cli;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Spoils a file: its bytes, its encoding, its cells, its structure, how deep it nests, its size.
 *
 * <p>Every change is drawn from one source of chance, so that a seed says what was done.
 */
final class Spoiler {
    /** Values that somebody's program somewhere has stumbled over. */
    static final List<String> ODD_VALUES =
            List.of(
                    "",
                    " ",
                    "0",
                    "-0",
                    "-0.0",
                    "-1",
                    "1",
                    "0.0001",
                    "1e400",
                    "1e-400",
                    "1E5",
                    "NaN",
                    "Infinity",
                    "-Infinity",
                    ".5",
                    "5.",
                    "1,5",
                    "1.234.567,89",
                    "0x1F",
                    "017",
                    "2147483647",
                    "2147483648",
                    "-2147483649",
                    "9223372036854775808",
                    "99999999.99",
                    "100000000",
                    "999999999",
                    "\u0661\u0662\u0663",
                    "9".repeat(400),
                    "1" + ".0".repeat(3),
                    "null",
                    "~",
                    "yes",
                    "no",
                    "true",
                    "50%",
                    "100%",
                    "90s",
                    "2026-02-30",
                    "+999999999-12-31",
                    "1920x1080",
                    "99999x99999",
                    "=cmd|' /C calc'!A0",
                    "+1",
                    "@SUM(A1)",
                    "\u202ELITTLE",
                    "a\u2066b\u200Fc",
                    "\u200B",
                    "\uFEFF",
                    "\uD83D\uDE00",
                    "\u001b[2J\u001b]0;x\u0007",
                    "\u0000",
                    "\u0085\u2028",
                    "<script>alert(1)</script>",
                    "\"><svg/onload=alert(1)>",
                    "${7*7}",
                    "%s%n%d",
                    "{0}",
                    "../../../etc/passwd",
                    "/dev/null",
                    ".",
                    "catalog",
                    "a;b;c",
                    "a|b|c",
                    "x".repeat(10_001),
                    "|a".repeat(2_500),
                    " ".repeat(9_000),
                    "\"",
                    "'",
                    "\\",
                    "#",
                    "- -",
                    "[1, 2]",
                    "{a: 1}",
                    "&a",
                    "*a",
                    "!!int 5",
                    "brass-regatta",
                    "ostrel-twill-4",
                    "quaymark");

    private static final List<String> ODD_LINES =
            List.of(
                    "---",
                    "...",
                    "%YAML 9.9",
                    "? [a, b]",
                    ": : :",
                    "<<: *a",
                    "x: &a [*a, *a]",
                    "\tkey: 1",
                    "key: |\n  text",
                    "key: \"unended",
                    ",,,,,,,,",
                    "\"a\"b,c",
                    "{\"a\":1}",
                    "[[[[[[",
                    "# \u202E",
                    "id,id,id");

    private static final Pattern FIGURE = Pattern.compile("[0-9]+(\\.[0-9]+)?");
    private static final Pattern WORD = Pattern.compile("[A-Za-z][A-Za-z0-9-]*");
    private static final Pattern VALUE = Pattern.compile("(?<=[:,\\[{;] ?)[^:,\\[\\]{};\\n]*");
    private static final int MOST_BYTES = 200_000;

    private final Random random;

    Spoiler(Random random) {
        this.random = random;
    }

    /** The bytes, spoilt once to three times. */
    byte[] spoil(byte[] sound) {
        byte[] bytes = sound;
        for (int i = random.nextInt(3); i >= 0; i--) {
            byte[] next = once(bytes);
            bytes = next.length > MOST_BYTES ? Arrays.copyOf(next, MOST_BYTES) : next;
        }
        return bytes;
    }

    private byte[] once(byte[] bytes) {
        return switch (random.nextInt(5)) {
            case 0 -> ofBytes(bytes);
            case 1 -> text(bytes, this::ofLines);
            case 2 -> text(bytes, this::ofCells);
            default -> text(bytes, this::ofWords);
        };
    }

    private interface Change {
        String of(String text);
    }

    private static byte[] text(byte[] bytes, Change change) {
        // One char a byte: what is no UTF-8 stays what it is.
        Charset charset = StandardCharsets.UTF_8;
        return change.of(new String(bytes, charset)).getBytes(charset);
    }

    private byte[] ofBytes(byte[] bytes) {
        String text = new String(bytes, StandardCharsets.ISO_8859_1);
        int from = random.nextInt(text.length() + 1);
        int to = Math.min(text.length(), from + random.nextInt(30));
        String middle = text.substring(from, to);
        String changed =
                switch (random.nextInt(14)) {
                    case 0 -> text.substring(0, from);
                    case 1 -> text.substring(from);
                    case 2 -> text.substring(0, from) + text.substring(to);
                    case 3 -> text.substring(0, to) + middle + text.substring(to);
                    case 4 -> text.substring(0, from) + noise() + text.substring(to);
                    case 5 -> text.substring(0, from) + noise() + text.substring(from);
                    case 6 -> text.substring(0, to) + middle.repeat(500) + text.substring(to);
                    case 7 -> "\u00EF\u00BB\u00BF" + text;
                    case 8 -> text.replace("\n", "\r\n");
                    case 9 -> text.replace('\n', '\r');
                    case 10 -> "\u0000".repeat(from % 50) + text;
                    case 11 -> "";
                    default -> null;
                };
        return changed == null ? encoded(bytes) : changed.getBytes(StandardCharsets.ISO_8859_1);
    }

    /** The same text in another character set, with a byte order mark or without. */
    private byte[] encoded(byte[] bytes) {
        String text = new String(bytes, StandardCharsets.UTF_8);
        List<Charset> charsets =
                List.of(
                        StandardCharsets.UTF_16,
                        StandardCharsets.UTF_16LE,
                        StandardCharsets.UTF_16BE,
                        StandardCharsets.ISO_8859_1,
                        Charset.forName("UTF-32"),
                        Charset.forName("windows-1252"));
        return (text + "\u00E9").getBytes(pick(charsets));
    }

    private String noise() {
        StringBuilder noise = new StringBuilder();
        for (int i = random.nextInt(8); i >= 0; i--) {
            noise.append((char) random.nextInt(256));
        }
        return noise.toString();
    }

    private String ofLines(String text) {
        List<String> lines = new ArrayList<>(Arrays.asList(text.split("\n", -1)));
        int at = random.nextInt(lines.size());
        int other = random.nextInt(lines.size());
        switch (random.nextInt(11)) {
            case 0 -> lines.remove(at);
            case 1 -> lines.add(other, lines.get(at));
            case 2 -> Collections.swap(lines, at, other);
            case 3 -> lines.set(at, "  " + lines.get(at));
            case 4 -> lines.set(at, lines.get(at).stripLeading());
            case 5 -> lines.add(at, pick(ODD_LINES));
            case 6 -> lines.set(at, lines.get(at) + pick(ODD_VALUES));
            case 7 ->
                    lines.addAll(
                            other, Collections.nCopies(1 + random.nextInt(300), lines.get(at)));
            case 8 -> lines.subList(Math.min(at, other), Math.max(at, other)).clear();
            case 9 -> lines.add(at, nested());
            default -> lines.set(at, lines.get(other));
        }
        return String.join("\n", lines);
    }

    /** A value that nests, in YAML or JSON, a few levels or very many. */
    private String nested() {
        int levels = random.nextBoolean() ? 1 + random.nextInt(80) : 1 + random.nextInt(5_000);
        return switch (random.nextInt(4)) {
            case 0 -> "deep: " + "[".repeat(levels) + "]".repeat(levels);
            case 1 -> "deep: " + "{a: ".repeat(levels) + "1" + "}".repeat(levels);
            case 2 -> "deep: " + "[".repeat(levels);
            default -> "deep:" + " -".repeat(levels) + " 1";
        };
    }

    private String ofCells(String text) {
        List<String> lines = new ArrayList<>(Arrays.asList(text.split("\n", -1)));
        int at = random.nextInt(lines.size());
        List<String> cells = new ArrayList<>(Arrays.asList(lines.get(at).split(",", -1)));
        int cell = random.nextInt(cells.size());
        switch (random.nextInt(7)) {
            case 0 -> cells.remove(cell);
            case 1 -> cells.add(cell, pick(ODD_VALUES));
            case 2 -> Collections.swap(cells, cell, random.nextInt(cells.size()));
            case 3 -> cells.set(cell, '"' + cells.get(cell) + "\n\"");
            case 4 -> cells.set(cell, below(lines, cell));
            default -> cells.set(cell, pick(ODD_VALUES));
        }
        lines.set(at, String.join(",", cells));
        return String.join("\n", lines);
    }

    /** The cell of another row in the same column: well formed, and of something else. */
    private String below(List<String> lines, int cell) {
        String[] cells = pick(lines).split(",", -1);
        return cell < cells.length ? cells[cell] : "";
    }

    private String ofWords(String text) {
        return switch (random.nextInt(6)) {
            case 0, 1 -> replaced(text, FIGURE, this::figure);
            case 2 -> replaced(text, WORD, word -> word(text));
            case 3 -> replaced(text, WORD, word -> pick(ODD_VALUES));
            default -> replaced(text, VALUE, word -> pick(ODD_VALUES));
        };
    }

    private String figure(String before) {
        return switch (random.nextInt(8)) {
            case 0 -> "0";
            case 1 -> "-" + before;
            case 2 -> before + "0".repeat(1 + random.nextInt(3));
            case 3 -> before.substring(0, Math.max(1, before.length() / 2));
            case 4 -> "0." + before.replace(".", "");
            case 5 -> Integer.toString(random.nextInt(1 << random.nextInt(31)));
            default -> pick(ODD_VALUES);
        };
    }

    private String word(String text) {
        List<String> words = new ArrayList<>();
        Matcher matcher = WORD.matcher(text);
        while (matcher.find()) {
            words.add(matcher.group());
        }
        return words.isEmpty() ? "" : pick(words);
    }

    /** One of the places that a pattern finds, replaced. */
    private String replaced(String text, Pattern pattern, Change change) {
        List<int[]> places = new ArrayList<>();
        Matcher matcher = pattern.matcher(text);
        while (matcher.find()) {
            places.add(new int[] {matcher.start(), matcher.end()});
        }
        if (places.isEmpty()) {
            return text + pick(ODD_VALUES);
        }
        int[] place = pick(places);
        return text.substring(0, place[0])
                + change.of(text.substring(place[0], place[1]))
                + text.substring(place[1]);
    }

    <T> T pick(List<T> list) {
        return list.get(random.nextInt(list.size()));
    }

    /** The spoilt bytes of some of the files named. */
    Map<String, byte[]> spoilt(SmallShop shop, List<String> names) {
        Map<String, byte[]> spoilt = new TreeMap<>();
        for (int i = random.nextInt(8) == 0 ? 1 : 0; i >= 0; i--) {
            String name = pick(names);
            spoilt.put(name, spoil(shop.bytes(name)));
        }
        return spoilt;
    }
}

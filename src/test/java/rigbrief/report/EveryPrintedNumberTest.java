package rigbrief.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rigbrief.brief.Brief;
import rigbrief.build.BuildRecord;
import rigbrief.catalogue.Catalogue;
import rigbrief.explain.Explainers;
import rigbrief.explain.Explanation;
import rigbrief.explain.Input;
import rigbrief.explain.Redone;
import rigbrief.explain.Topic;
import rigbrief.file.BriefReader;
import rigbrief.file.CatalogueReader;
import rigbrief.proposal.Proposal;
import rigbrief.proposal.Proposals;
import rigbrief.proposal.Proposer;
import rigbrief.proposal.SearchLimits;
import rigbrief.proposal.account.Accounts;
import rigbrief.proposal.account.ReplacementAccount;
import rigbrief.proposal.budget.Budget;
import rigbrief.proposal.budget.BudgetFinder;
import rigbrief.proposal.budget.BudgetLimits;
import rigbrief.proposal.budget.Progress;
import rigbrief.proposal.replace.Disturbance;
import rigbrief.proposal.replace.Limits;
import rigbrief.proposal.replace.Replacement;
import rigbrief.proposal.replace.Replacer;
import rigbrief.proposal.replace.Trouble;

/**
 * Walks the texts of {@code propose}, {@code audit}, {@code budget} and {@code replace}: every
 * number in them stands in a sentence of {@code sentences.txt}, and is either copied, or explained,
 * and then the explanation gives that very number. A number in a sentence of its own fails.
 *
 * <p>The catalogue is the sample with the digits of its models spelt as letters, so that no digit
 * of a name passes for a number.
 */
class EveryPrintedNumberTest {
    private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");

    /** Digits, thousands parted or not, with or without decimals. */
    private static final String DIGITS = "(?:\\d{1,3}(?:,\\d{3})+|\\d+)(?:\\.\\d+)?";

    /** Digits as letters that nothing else is written with. */
    private static final String LETTERS = "ABCDEFGHIJ";

    @TempDir static Path folder;

    private static Catalogue parts;
    private static final Map<String, Proposals> ANSWERS = new LinkedHashMap<>();

    /** By section, in their order: longer sentences come first. */
    private static final Map<String, List<Sentence>> SENTENCES = new LinkedHashMap<>();

    /** A sentence, and where each of its numbers comes from. */
    private record Sentence(Pattern pattern, List<String> from) {
        static Sentence of(String line) {
            String[] cells = line.split(" \\| ", -1);
            String words = cells[0];
            StringBuilder pattern =
                    new StringBuilder(
                            words.startsWith("#")
                                    ? "(?<![\\w.])"
                                    : words.matches("\\w.*") ? "\\b" : "");
            for (String piece : words.split("(?<=[#@±])|(?=[#@±])")) {
                pattern.append(
                        switch (piece) {
                            case "#" -> "(-?" + DIGITS + ")";
                            case "±" -> "([+-]" + DIGITS + ")";
                            case "@" -> "\\S+";
                            default -> Pattern.quote(piece);
                        });
            }
            return new Sentence(
                    Pattern.compile(pattern + "(?!\\d)"),
                    Arrays.asList(cells).subList(1, cells.length));
        }
    }

    @BeforeAll
    static void read_sentences_and_catalogue() throws Exception {
        try (var in =
                EveryPrintedNumberTest.class.getResourceAsStream(
                        "/rigbrief/report/sentences.txt")) {
            String section = "all";
            for (String line :
                    new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList()) {
                if (line.startsWith("== ")) {
                    section = line.substring(3);
                } else if (!line.startsWith("//")) {
                    SENTENCES
                            .computeIfAbsent(section, any -> new ArrayList<>())
                            .add(Sentence.of(line));
                }
            }
        }
        try (Stream<Path> files = Files.list(Path.of("catalog-sample"))) {
            for (Path file : files.toList()) {
                Files.writeString(
                        folder.resolve(file.getFileName()), spelt(Files.readString(file), file));
            }
        }
        parts = CatalogueReader.read(folder);
    }

    /** The file with the digits of the models as letters. */
    private static String spelt(String text, Path file) {
        List<String> lines = new ArrayList<>(text.lines().toList());
        int model = Arrays.asList(lines.get(0).split(",")).indexOf("model");
        if (model < 0 || !file.toString().endsWith(".csv")) {
            return text;
        }
        for (int i = 1; i < lines.size(); i++) {
            String[] cells = lines.get(i).split(",", -1);
            StringBuilder spelt = new StringBuilder();
            cells[model]
                    .chars()
                    .forEach(
                            c ->
                                    spelt.append(
                                            c >= '0' && c <= '9'
                                                    ? LETTERS.charAt(c - '0')
                                                    : (char) c));
            cells[model] = spelt.toString();
            lines.set(i, String.join(",", cells));
        }
        return String.join("\n", lines) + "\n";
    }

    /** What can be explained, worked out when it is asked for. */
    private static final class Book {
        private final Map<String, Topic> topics = new LinkedHashMap<>();
        private final Map<String, Explanation> explanations = new LinkedHashMap<>();

        void add(List<Topic> more) {
            more.forEach(topic -> topics.put(topics.size() + " " + topic.name(), topic));
        }

        boolean gives(String from, BigDecimal printed) {
            boolean inside = from.startsWith("~");
            Pattern names = Pattern.compile("\\d+ (?:" + (inside ? from.substring(1) : from) + ")");
            for (String name : topics.keySet()) {
                if (names.matcher(name).matches() && gives(name, printed, inside)) {
                    return true;
                }
            }
            return false;
        }

        private boolean gives(String name, BigDecimal printed, boolean inside) {
            Explanation it =
                    explanations.computeIfAbsent(
                            name,
                            key -> {
                                Explanation made = topics.get(key).explanation().get();
                                Redone.check(made);
                                return made;
                            });
            if (!inside) {
                return it.value().isPresent() && same(it.value().get(), printed);
            }
            Stream<String> inputs = it.inputs().stream().map(Input::value);
            Stream<String> steps =
                    it.steps().stream().map(step -> step.substring(step.lastIndexOf(" = ") + 3));
            return Stream.concat(Stream.concat(inputs, steps), it.remarks().stream())
                    .flatMap(words -> NUMBER.matcher(words).results().map(found -> found.group()))
                    .anyMatch(found -> same(new BigDecimal(found), printed));
        }

        /** The same to the digits printed, as a number, without its sign, or in percent. */
        private static boolean same(BigDecimal exact, BigDecimal printed) {
            BigDecimal half =
                    BigDecimal.ONE
                            .movePointLeft(printed.scale())
                            .multiply(new BigDecimal("0.5005"));
            for (BigDecimal value : List.of(exact, exact.negate(), exact.movePointRight(2))) {
                if (value.subtract(printed).abs().compareTo(half) <= 0) {
                    return true;
                }
            }
            return false;
        }
    }

    /** Sentences are taken one by one; what one has taken the next ones don't see. */
    private static void walk(String text, String section, Book book) {
        String left =
                text.replaceAll("\\s+", " ")
                        .replaceAll("\\b[a-z]+(-[a-z0-9]+)*-[a-z]*\\d[a-z0-9]*(-[a-z0-9]+)*", "id");
        List<String> wrong = new ArrayList<>();
        List<Sentence> sentences = new ArrayList<>(SENTENCES.getOrDefault(section, List.of()));
        sentences.addAll(SENTENCES.get("all"));
        for (Sentence sentence : sentences) {
            Matcher matcher = sentence.pattern().matcher(left);
            StringBuilder rest = new StringBuilder();
            while (matcher.find()) {
                for (int i = 0; i < sentence.from().size(); i++) {
                    String from = sentence.from().get(i);
                    BigDecimal printed = new BigDecimal(matcher.group(i + 1).replace(",", ""));
                    if (!from.equals("=") && !from.equals("-") && !book.gives(from, printed)) {
                        wrong.add(matcher.group() + ": " + printed + " is not " + from);
                    }
                }
                matcher.appendReplacement(
                        rest, Matcher.quoteReplacement(matcher.group().replaceAll("\\d", "_")));
            }
            left = matcher.appendTail(rest).toString();
        }
        String after = left;
        Pattern.compile(".{0,40}\\d.{0,40}")
                .matcher(after)
                .results()
                .forEach(found -> wrong.add("not known: " + found.group()));
        assertThat(wrong).isEmpty();
    }

    private static Book book(Proposals answer, BuildRecord filed, Supplier<Budget> budget) {
        Book book = new Book();
        book.add(Explainers.topics(answer.brief(), parts, filed.build()));
        book.add(Accounts.topics(answer.brief(), parts, filed, () -> answer, budget));
        return book;
    }

    private static Proposals answer(String scenario) throws Exception {
        if (!ANSWERS.containsKey(scenario)) {
            ANSWERS.put(
                    scenario, new Proposer(SearchLimits.usual()).propose(brief(scenario), parts));
        }
        return ANSWERS.get(scenario);
    }

    private static Brief brief(String scenario) throws Exception {
        return BriefReader.read(Path.of("scenarios", scenario + ".yaml"), parts);
    }

    @ParameterizedTest
    @ValueSource(strings = {"tight-600", "school-workshop", "editor"})
    void of_proposals_and_audits(String scenario) throws Exception {
        Proposals answer = answer(scenario);
        Brief brief = answer.brief();
        Book all = new Book();
        for (Proposal proposal : answer.proposals()) {
            Book book = book(answer, proposal.record(), () -> null);
            all.add(List.copyOf(book.topics.values()));
            Proposals one =
                    new Proposals(
                            brief,
                            parts,
                            1,
                            List.of(proposal),
                            List.of(),
                            Optional.empty(),
                            List.of());
            walk(new ProposalsText().write(one, Style.PLAIN.wide(160)), "all", book);
            walk(
                    new AuditText()
                            .write(
                                    new AuditAnswer("list", brief, parts, proposal.audit()),
                                    Style.PLAIN.wide(160)),
                    "all",
                    book);
        }
        String text = new ProposalsText().write(answer, Style.PLAIN.wide(160));
        int beside = text.indexOf("SIDE BY SIDE");
        if (beside >= 0) {
            walk(text.substring(beside), "propose", all);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = "tight-600")
    void of_budgets(String scenario) throws Exception {
        Proposals answer = answer(scenario);
        Brief brief = answer.brief();
        Budget budget =
                new BudgetFinder(BudgetLimits.usual(), () -> false, Progress.NONE)
                        .find(brief, parts, brief.ceiling().minorUnits(), need -> true);

        Book book = book(answer, answer.proposals().get(0).record(), () -> budget);
        budget.front().forEach(step -> book.add(Explainers.topics(brief, parts, step.build())));
        walk(new BudgetText(true).write(budget, Style.PLAIN.wide(160)), "budget", book);
    }

    @ParameterizedTest
    @ValueSource(strings = {"tight-600", "school-workshop", "editor"})
    void of_replacements(String scenario) throws Exception {
        Proposals answer = answer(scenario);
        Brief brief = answer.brief();
        BuildRecord filed = answer.proposals().get(0).record();
        Trouble trouble = new Trouble(List.of(filed.build().processor().id()), List.of(), Map.of());
        Replacement found =
                new Replacer(Limits.usual(), Disturbance.usual(parts.currency()))
                        .replace(filed, trouble, parts);
        Book book = new Book();
        book.add(new ReplacementAccount(brief, () -> found).topics());
        found.ways()
                .forEach(way -> book.add(Explainers.topics(brief, parts, way.record().build())));

        walk(
                new ReplacementText()
                        .write(new ReplacementAnswer("list", found), Style.PLAIN.wide(160)),
                "replace",
                book);
    }
}

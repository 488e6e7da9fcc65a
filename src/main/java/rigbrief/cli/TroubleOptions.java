package rigbrief.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import rigbrief.build.BuildLine;
import rigbrief.build.BuildRecord;
import rigbrief.catalogue.Catalogue;
import rigbrief.diagnostic.Nearest;
import rigbrief.diagnostic.Quotation;
import rigbrief.proposal.replace.Disturbance;
import rigbrief.proposal.replace.Trouble;
import rigbrief.quantity.Money;

/** What happened to the parts of a build, as said on the command line. */
final class TroubleOptions {
    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec;

    @Option(
            names = "--unavailable",
            paramLabel = "PART",
            arity = "1..*",
            description = "Parts that can't be bought any more, by id or slot.")
    private List<String> unavailable = new ArrayList<>();

    @Option(
            names = "--faulty",
            paramLabel = "PART",
            arity = "1..*",
            description = "Parts that are faulty, by id or slot.")
    private List<String> faulty = new ArrayList<>();

    @Option(
            names = "--price-rise",
            paramLabel = "PART=MONEY",
            arity = "1..*",
            description = "Parts that cost another price now, by id or slot, with the price.")
    private List<String> prices = new ArrayList<>();

    @Option(
            names = "--restocking",
            paramLabel = "PERCENT",
            defaultValue = "15",
            description =
                    "Share that suppliers keep of sound parts that go back. Default:"
                            + " ${DEFAULT-VALUE}.")
    private int restocking;

    /** Whether anything is named. */
    boolean named() {
        return !unavailable.isEmpty() || !faulty.isEmpty() || !prices.isEmpty();
    }

    /** What it costs to give up what is here. */
    Disturbance disturbance(Catalogue parts) {
        if (restocking < 0 || restocking > 100) {
            throw wrong("--restocking: found " + restocking + ", expected 0 to 100");
        }
        return new Disturbance(restocking, Disturbance.usual(parts.currency()).labourPerHour());
    }

    /** What happened to the parts of a build. */
    Trouble trouble(BuildRecord filed, Catalogue parts) {
        Map<String, Money> rises = new LinkedHashMap<>();
        for (String rise : prices) {
            int equals = rise.lastIndexOf('=');
            if (equals < 1) {
                throw wrong(
                        "--price-rise: found %s, expected PART=MONEY; write board=129.50, say"
                                .formatted(Quotation.of(rise)));
            }
            Money price;
            try {
                price = Amount.of("--price-rise", rise.substring(equals + 1), parts.currency());
            } catch (IllegalArgumentException refused) {
                throw wrong(refused.getMessage());
            }
            for (String id :
                    ids("--price-rise", List.of(rise.substring(0, equals)), filed, parts)) {
                rises.put(id, price);
            }
        }
        return new Trouble(
                ids("--unavailable", unavailable, filed, parts),
                ids("--faulty", faulty, filed, parts),
                rises);
    }

    /** Ids of the parts that are meant: by id, or by the slot that they fill in the build. */
    private List<String> ids(
            String option, List<String> words, BuildRecord filed, Catalogue parts) {
        Set<String> ids = new LinkedHashSet<>();
        for (String word : words) {
            boolean mine = filed.lines().stream().anyMatch(it -> it.part().id().equals(word));
            if (mine || parts.part(word).isPresent() && !option.equals("--faulty")) {
                ids.add(word);
                continue;
            }
            ids.add(
                    filed.lines().stream()
                            .filter(line -> line.slot().word().equals(word))
                            .map(line -> line.part().id())
                            .findFirst()
                            .orElseThrow(() -> wrong(unknown(option, word, filed))));
        }
        return List.copyOf(ids);
    }

    private static String unknown(String option, String word, BuildRecord filed) {
        List<String> known = new ArrayList<>();
        for (BuildLine line : filed.lines()) {
            known.add(line.part().id());
            known.add(line.slot().word());
        }
        return "%s: found %s, expected a part of the build, by id or slot; %s"
                .formatted(
                        option,
                        Quotation.of(word),
                        Nearest.to(word, known)
                                .map(near -> "did you mean " + near + "?")
                                .orElse("run rigbrief order BUILD to see them"));
    }

    /** The same words again, for the next command. */
    String asked() {
        StringBuilder words = new StringBuilder();
        unavailable.forEach(part -> words.append(" --unavailable ").append(ShellWord.of(part)));
        faulty.forEach(part -> words.append(" --faulty ").append(ShellWord.of(part)));
        prices.forEach(rise -> words.append(" --price-rise ").append(ShellWord.of(rise)));
        return words.toString();
    }

    private ParameterException wrong(String message) {
        return new ParameterException(spec.commandLine(), message);
    }
}

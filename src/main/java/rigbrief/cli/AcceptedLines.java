package rigbrief.cli;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import rigbrief.catalogue.Catalogue;
import rigbrief.diagnostic.Quotation;
import rigbrief.pricelist.PriceList;
import rigbrief.pricelist.PriceRow;
import rigbrief.pricelist.Verdicts;

/** Reads what the command line says of single lines of a price list. */
final class AcceptedLines {
    private static final int LONGEST_LINE = 8;

    private final CommandLine command;
    private final Set<Integer> lines;
    private final Catalogue catalogue;

    AcceptedLines(CommandLine command, PriceList list, Catalogue catalogue) {
        this.command = command;
        this.lines = list.rows().stream().map(PriceRow::line).collect(Collectors.toSet());
        this.catalogue = catalogue;
    }

    /** The verdicts. */
    Verdicts verdicts(List<String> accept, List<Integer> skip) {
        Map<Integer, String> parts = new HashMap<>();
        Set<Integer> right = new HashSet<>();
        for (String word : accept) {
            int sign = word.indexOf('=');
            if (sign < 0) {
                right.add(line("--accept", word));
            } else {
                parts.put(line("--accept", word.substring(0, sign)), part(word, sign));
            }
        }
        skip.forEach(line -> line("--skip", line.toString()));
        return new Verdicts(parts, right, new HashSet<>(skip));
    }

    private int line(String option, String word) {
        boolean number = word.matches("[0-9]{1," + LONGEST_LINE + "}");
        if (!number || !lines.contains(Integer.parseInt(word))) {
            throw wrong(
                    "%s: found %s, expected the number of a line with a price, as the report names them"
                            .formatted(option, Quotation.of(word)));
        }
        return Integer.parseInt(word);
    }

    private String part(String word, int sign) {
        String id = word.substring(sign + 1);
        if (catalogue.part(id).isEmpty()) {
            throw wrong(
                    "--accept: found %s, expected LINE=PART with the id of a part in the catalogue"
                            .formatted(Quotation.of(word)));
        }
        return id;
    }

    private ParameterException wrong(String message) {
        return new ParameterException(command, message);
    }
}

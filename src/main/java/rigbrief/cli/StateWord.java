package rigbrief.cli;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import rigbrief.build.PartState;
import rigbrief.diagnostic.Nearest;
import rigbrief.diagnostic.Quotation;

/** Reads the state of a part. */
final class StateWord implements ITypeConverter<PartState> {
    @Override
    public PartState convert(String word) {
        for (PartState state : PartState.values()) {
            if (state.word().equals(word)) {
                return state;
            }
        }
        String advice =
                Nearest.to(word, words()).map(near -> "; did you mean " + near + "?").orElse("");
        throw new TypeConversionException(
                "found %s, expected one of %s%s"
                        .formatted(Quotation.of(word), String.join(", ", words()), advice));
    }

    private static List<String> words() {
        List<String> words = new ArrayList<>();
        for (PartState state : PartState.values()) {
            words.add(state.word());
        }
        return words;
    }

    /** The words, for help and completion. */
    static final class Words implements Iterable<String> {
        @Override
        public Iterator<String> iterator() {
            return words().iterator();
        }
    }
}

package rigbrief.cli;

import java.util.OptionalInt;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import rigbrief.measurement.tune.HeldScenes;

/** Reads in how much of a title a rate has to hold: {@code all}, {@code all-but-worst}, 90%. */
final class HeldIn implements ITypeConverter<HeldScenes> {
    static final String USUAL = "all-but-worst";

    @Override
    public HeldScenes convert(String word) {
        if (word.equals(USUAL)) {
            return HeldScenes.ALL_BUT_WORST;
        }
        if (word.equals("all")) {
            return HeldScenes.ALL;
        }
        if (word.matches("[1-9][0-9]?%|100%")) {
            int percent = Integer.parseInt(word.substring(0, word.length() - 1));
            return new HeldScenes(OptionalInt.of(percent));
        }
        throw new TypeConversionException(
                "found '"
                        + word
                        + "', expected all, all-but-worst or a share of play time; write 90%");
    }
}

package rigbrief.cli;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import rigbrief.batch.Shard;
import rigbrief.diagnostic.Quotation;

/** Reads a share of a batch: {@code 3/10}. */
final class ShardOption implements ITypeConverter<Shard> {
    private static final Pattern FORM = Pattern.compile("([0-9]{1,6})/([0-9]{1,6})");

    @Override
    public Shard convert(String word) {
        Matcher matcher = FORM.matcher(word);
        if (matcher.matches()) {
            int number = Integer.parseInt(matcher.group(1));
            int of = Integer.parseInt(matcher.group(2));
            if (number >= 1 && number <= of) {
                return new Shard(number, of);
            }
        }
        throw new TypeConversionException(
                "found %s, expected the number of the share, from 1, and how many there are; write 3/10"
                        .formatted(Quotation.of(word)));
    }
}

package rigbrief.world;

import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import java.io.IOException;
import java.io.Writer;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * A CSV file (RFC 4180) as text cells.
 *
 * @param header names of the columns
 * @param rows cells by row, as wide as the header
 */
record Sheet(List<String> header, List<String[]> rows) {
    /** Reads a sound file. */
    static Sheet read(Path file) throws IOException {
        CsvMapper mapper = new CsvMapper();
        mapper.enable(CsvParser.Feature.WRAP_AS_ARRAY);
        try (MappingIterator<String[]> lines =
                mapper.readerFor(String[].class).readValues(file.toFile())) {
            List<String[]> rows = new ArrayList<>(lines.readAll());
            return new Sheet(List.of(rows.remove(0)), rows);
        }
    }

    /** The place of a column. */
    int column(String name) {
        int index = header.indexOf(name);
        if (index < 0) {
            throw new IllegalArgumentException("no column " + name + " among " + header);
        }
        return index;
    }

    /** Writes one line; cells with a comma are quoted, none here holds a quote or a line break. */
    static void write(Writer to, String... cells) throws IOException {
        for (int i = 0; i < cells.length; i++) {
            to.write(i == 0 ? "" : ",");
            to.write(cells[i].indexOf(',') < 0 ? cells[i] : '"' + cells[i] + '"');
        }
        to.write('\n');
    }
}

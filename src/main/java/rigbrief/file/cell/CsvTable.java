package rigbrief.file.cell;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.dataformat.csv.CsvFactory;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rigbrief.diagnostic.Fault;
import rigbrief.diagnostic.Faults;

/**
 * A CSV file (RFC 4180) read row by row; after {@link #next} it is the row it stands at.
 *
 * <p>Reading stops with a fault at the first place where the file is no CSV any more.
 */
public final class CsvTable implements Row {
    private static final CsvFactory FACTORY = new CsvFactory();
    private static final int LONGEST_CELL = 10_000;

    /** Cells of one row: a file of nothing but commas would fill the memory with their places. */
    private static final int MOST_CELLS = 10_000;

    /** Ids remembered of rows that were passed by: they only spare somebody a second fault. */
    private static final int MOST_LOST = 10_000;

    private final String file;
    private final Faults faults;
    private final CsvParser parser;
    private final Map<String, Integer> indexByHeader = new HashMap<>();
    private final List<String> texts = new ArrayList<>();
    private final List<JsonLocation> places = new ArrayList<>();
    private final List<String> lost = new ArrayList<>();
    private final List<String> asked = new ArrayList<>();
    private final List<Integer> askedAt = new ArrayList<>();
    private int nextAsked;
    private int width;

    private CsvTable(String file, String text, char delimiter, Faults faults) throws IOException {
        this.file = file;
        this.faults = faults;
        this.parser = FACTORY.createParser(text);
        parser.setSchema(CsvSchema.emptySchema().withColumnSeparator(delimiter));
        parser.enable(CsvParser.Feature.WRAP_AS_ARRAY);
        parser.nextToken();
    }

    /**
     * Opens a file and reads its header.
     *
     * @param file name for faults
     * @param text content, without a byte order mark
     * @param columns the columns that are asked for; others are noted
     */
    public static CsvTable open(String file, String text, List<Column> columns, Faults faults) {
        return open(file, text, ',', columns, faults);
    }

    /**
     * Opens a file whose cells something else than a comma parts, and reads its header.
     *
     * @param delimiter what stands between two cells
     */
    public static CsvTable open(
            String file, String text, char delimiter, List<Column> columns, Faults faults) {
        try {
            CsvTable table = new CsvTable(file, text, delimiter, faults);
            int before = faults.count();
            boolean anything = table.advance();
            if (anything && new Header(table, columns, faults).usable()) {
                table.width = table.texts.size();
            } else if (!anything && faults.count() == before) {
                faults.add(empty(file));
            }
            return table;
        } catch (IOException unreadable) {
            // A string is read, no file: only the parser's own refusals come here, see advance().
            throw new UncheckedIOException(unreadable);
        }
    }

    /** Goes to the next row that has any text; rows of the wrong length are reported, passed by. */
    public boolean next() {
        while (width > 0 && advance()) {
            if (texts.size() == width) {
                return true;
            }
            lose(texts.get(Math.min(indexByHeader.getOrDefault("id", 0), texts.size() - 1)));
            faults.add(wrongLength());
        }
        return false;
    }

    private void lose(String id) {
        if (lost.size() < MOST_LOST) {
            lost.add(id);
        }
    }

    /** What the rows of the wrong length were probably about, so that nobody else misses it. */
    public List<String> lost() {
        return Collections.unmodifiableList(lost);
    }

    List<String> texts() {
        return texts;
    }

    Fault fault(int cell, String subject, String found, String expected, String advice) {
        JsonLocation place = places.get(cell);
        return new Fault(
                file, place.getLineNr(), place.getColumnNr(), subject, found, expected, advice);
    }

    void header(String name, int index) {
        indexByHeader.putIfAbsent(name, index);
    }

    /** The line the row begins at, from 1. */
    public int line() {
        return places.get(0).getLineNr();
    }

    @Override
    public String cell(String column) {
        Integer index = place(column);
        if (index == null) {
            return "";
        }
        String text = texts.get(index);
        if (text.length() > LONGEST_CELL) {
            fault(column, text, "at most 10000 characters", "shorten the cell");
            return null;
        }
        return text;
    }

    /** Every row is asked for the same columns in the same order, by the same words. */
    @SuppressWarnings("ReferenceEquality") // another word of the same letters is looked up
    private Integer place(String column) {
        if (nextAsked < asked.size() && asked.get(nextAsked) == column) {
            return askedAt.get(nextAsked++);
        }
        Integer index = indexByHeader.get(column);
        if (nextAsked == asked.size()) {
            asked.add(column);
            askedAt.add(index);
            nextAsked++;
        }
        return index;
    }

    @Override
    public void fault(String column, String found, String expected, String advice) {
        Integer index = indexByHeader.get(column);
        if (index != null) {
            faults.add(fault(index, column, found, expected, advice));
        }
    }

    @Override
    public String leaveOut() {
        return "leave the cell empty";
    }

    @Override
    public boolean knows(String column) {
        return indexByHeader.containsKey(column);
    }

    /** Reads rows until one has any text in it. */
    private boolean advance() {
        try {
            boolean row = readRow();
            while (row && texts.stream().allMatch(String::isEmpty)) {
                row = readRow();
            }
            return row;
        } catch (StreamConstraintsException tooLong) {
            faults.add(tooLong(parser.currentTokenLocation()));
            width = 0;
            return false;
        } catch (JsonProcessingException broken) {
            faults.add(notCsv(parser.currentTokenLocation()));
            width = 0;
            return false;
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private boolean readRow() throws IOException {
        texts.clear();
        places.clear();
        nextAsked = 0;
        if (parser.nextToken() != JsonToken.START_ARRAY) {
            return false;
        }
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            if (texts.size() == MOST_CELLS) {
                faults.add(tooManyCells());
                width = 0;
                return false;
            }
            texts.add(parser.getText().strip());
            places.add(parser.currentTokenLocation());
        }
        return true;
    }

    private static Fault empty(String file) {
        String advice = "write them in, or remove the file";
        return new Fault(file, 1, 1, "file", "", "a header and rows", advice);
    }

    private Fault tooManyCells() {
        return fault(
                MOST_CELLS - 1,
                "row",
                "more than %d cells".formatted(MOST_CELLS),
                "at most %d in a row".formatted(MOST_CELLS),
                "look whether this is the right file");
    }

    private Fault tooLong(JsonLocation place) {
        return new Fault(
                file,
                place.getLineNr(),
                place.getColumnNr(),
                "file",
                "a cell of millions of characters",
                "at most %d".formatted(LONGEST_CELL),
                "look for a quote that is never closed, or shorten the cell");
    }

    private Fault notCsv(JsonLocation place) {
        return new Fault(
                file,
                place.getLineNr(),
                place.getColumnNr(),
                "file",
                "a cell that begins here and does not end",
                "a comma or the end of the line behind every closing quote",
                "close the quote, and write \"\" for a quote inside a cell");
    }

    private Fault wrongLength() {
        int last = texts.size() - 1;
        String count = texts.size() + (texts.size() == 1 ? " cell" : " cells");
        return fault(
                Math.min(last, width),
                "row",
                count,
                width + " as in the header",
                texts.size() < width
                        ? "add the missing commas"
                        : "put a cell that holds a comma between quotes");
    }
}

package rigbrief.cli;

import java.util.List;
import org.jline.reader.CompletingParsedLine;
import org.jline.reader.ParsedLine;
import org.jline.reader.Parser;

/** Splits a typed line at commas, since titles and names have blanks in them. */
final class CommaParser implements Parser {
    @Override
    public ParsedLine parse(String line, int cursor, ParseContext context) {
        int start = line.lastIndexOf(',', cursor - 1) + 1;
        while (start < cursor && line.charAt(start) == ' ') {
            start++;
        }
        int comma = line.indexOf(',', cursor);
        int end = comma < 0 ? line.length() : comma;
        return new Entry(line, cursor, line.substring(start, end), cursor - start);
    }

    @Override
    public boolean isEscapeChar(char c) {
        return false;
    }

    /** The entry that the cursor is in. */
    private record Entry(String line, int cursor, String word, int wordCursor)
            implements CompletingParsedLine {
        @Override
        public int wordIndex() {
            return 0;
        }

        @Override
        public List<String> words() {
            return List.of(word);
        }

        @Override
        public CharSequence escape(CharSequence candidate, boolean complete) {
            return candidate;
        }

        @Override
        public int rawWordCursor() {
            return wordCursor;
        }

        @Override
        public int rawWordLength() {
            return word.length();
        }
    }
}

package rigbrief.cli;

import java.io.BufferedOutputStream;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;

/** A stream of text that remembers why it could not be written, which a print stream forgets. */
final class ResultStream extends PrintStream {
    private final Remembering end;

    /** Text in UTF-8 on its way into a stream. */
    ResultStream(OutputStream stream) {
        this(new Remembering(stream));
    }

    private ResultStream(Remembering end) {
        super(new BufferedOutputStream(end), false, StandardCharsets.UTF_8);
        this.end = end;
    }

    /**
     * What kept it from being written to the end; empty when all is written so far, or when the
     * reader of a pipe had enough, which is no fault.
     */
    Optional<String> failure() {
        return Optional.ofNullable(end.first)
                .map(IOException::getMessage)
                .filter(why -> !why.toLowerCase(Locale.ROOT).contains("pipe"));
    }

    private static final class Remembering extends FilterOutputStream {
        private IOException first;

        Remembering(OutputStream stream) {
            super(stream);
        }

        @Override
        public void write(byte[] bytes, int from, int count) throws IOException {
            refuseFurther();
            try {
                out.write(bytes, from, count);
            } catch (IOException failed) {
                first = failed;
                throw failed;
            }
        }

        /** What comes behind a gap is of no use to anybody. */
        private void refuseFurther() throws IOException {
            if (first != null) {
                throw new IOException(first);
            }
        }

        @Override
        public void flush() throws IOException {
            try {
                out.flush();
            } catch (IOException failed) {
                first = first == null ? failed : first;
                throw failed;
            }
        }
    }
}

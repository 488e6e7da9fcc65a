package rigbrief.file;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import rigbrief.diagnostic.Fault;
import rigbrief.diagnostic.Faults;

/** Bytes read as text in whatever character set they are in. */
final class EncodedText {
    private EncodedText() {}

    /** A byte order mark and what it means (Unicode Standard, section 23.8). */
    private enum Mark {
        UTF_8(StandardCharsets.UTF_8, 0xEF, 0xBB, 0xBF),
        UTF_16BE(StandardCharsets.UTF_16BE, 0xFE, 0xFF),
        UTF_16LE(StandardCharsets.UTF_16LE, 0xFF, 0xFE);

        private final Charset charset;
        private final byte[] bytes;

        Mark(Charset charset, int... bytes) {
            this.charset = charset;
            this.bytes = new byte[bytes.length];
            for (int i = 0; i < bytes.length; i++) {
                this.bytes[i] = (byte) bytes[i];
            }
        }

        boolean begins(byte[] text) {
            return text.length >= bytes.length
                    && Arrays.equals(Arrays.copyOf(text, bytes.length), bytes);
        }
    }

    /**
     * The text without a byte order mark, which decides the character set where there is one. Bytes
     * that stand for nothing are reported at the first place.
     */
    static String decode(byte[] bytes, Charset usual, String file, Faults faults) {
        Charset charset = usual;
        int from = 0;
        for (Mark mark : Mark.values()) {
            if (mark.begins(bytes)) {
                charset = mark.charset;
                from = mark.bytes.length;
                break;
            }
        }
        return decode(ByteBuffer.wrap(bytes, from, bytes.length - from), charset, file, faults);
    }

    private static String decode(ByteBuffer in, Charset charset, String file, Faults faults) {
        CharsetDecoder strict =
                charset.newDecoder()
                        .onMalformedInput(CodingErrorAction.REPORT)
                        .onUnmappableCharacter(CodingErrorAction.REPORT);
        CharBuffer out = CharBuffer.allocate(in.remaining() + 1);
        CoderResult result = strict.decode(in, out, true);
        String text = out.flip().toString();
        if (result.isError()) {
            int line = 1 + (int) text.chars().filter(c -> c == '\n').count();
            int column = text.length() - text.lastIndexOf('\n');
            String found = "byte 0x%02X".formatted(in.get(in.position()) & 0xFF);
            String advice = "correct encoding in the map, or save the file again";
            faults.add(new Fault(file, line, column, "file", found, charset.name(), advice));
        }
        return text;
    }
}

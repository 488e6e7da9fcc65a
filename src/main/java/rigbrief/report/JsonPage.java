package rigbrief.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.SerializableString;
import com.fasterxml.jackson.core.io.CharacterEscapes;
import com.fasterxml.jackson.core.io.SerializedString;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import rigbrief.diagnostic.Quotation;

/**
 * A JSON document (RFC 8259) in the making, indented by two, with line feeds alone.
 *
 * <p>What prints nothing of its own is escaped, so that a document is as safe on a terminal as the
 * text is.
 */
final class JsonPage {
    private final StringWriter text = new StringWriter();
    private final JsonGenerator json;

    /** A document that is one object. */
    static String object(Consumer<JsonPage> fields) {
        JsonPage page = new JsonPage();
        page.write(JsonGenerator::writeStartObject);
        fields.accept(page);
        page.write(JsonGenerator::writeEndObject);
        page.write(JsonGenerator::close);
        return page.text.append('\n').toString();
    }

    private JsonPage() {
        try {
            json = new JsonFactory().createGenerator(text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
        json.setPrettyPrinter(
                new DefaultPrettyPrinter()
                        .withObjectIndenter(indenter)
                        .withArrayIndenter(indenter));
        json.enable(JsonGenerator.Feature.WRITE_BIGDECIMAL_AS_PLAIN);
        json.setCharacterEscapes(new Escapes());
    }

    /** A text. */
    JsonPage field(String name, String value) {
        return write(generator -> generator.writeStringField(name, value));
    }

    /** A whole number. */
    JsonPage field(String name, long value) {
        return write(generator -> generator.writeNumberField(name, value));
    }

    /** A decimal number. */
    JsonPage field(String name, BigDecimal value) {
        return write(generator -> generator.writeNumberField(name, value));
    }

    /** A decimal number, or null. */
    JsonPage field(String name, Optional<BigDecimal> value) {
        return value.isPresent() ? field(name, value.get()) : nothing(name);
    }

    /** Yes or no. */
    JsonPage field(String name, boolean value) {
        return write(generator -> generator.writeBooleanField(name, value));
    }

    /** Null. */
    JsonPage nothing(String name) {
        return write(generator -> generator.writeNullField(name));
    }

    /** An object within. */
    JsonPage object(String name, Consumer<JsonPage> fields) {
        write(generator -> generator.writeObjectFieldStart(name));
        fields.accept(this);
        return write(JsonGenerator::writeEndObject);
    }

    /** A list of objects. */
    <T> JsonPage list(String name, List<T> items, Consumer<T> fields) {
        write(generator -> generator.writeArrayFieldStart(name));
        for (T item : items) {
            write(JsonGenerator::writeStartObject);
            fields.accept(item);
            write(JsonGenerator::writeEndObject);
        }
        return write(JsonGenerator::writeEndArray);
    }

    /** A list of texts. */
    JsonPage texts(String name, List<?> texts) {
        write(generator -> generator.writeArrayFieldStart(name));
        texts.forEach(item -> write(generator -> generator.writeString(item.toString())));
        return write(JsonGenerator::writeEndArray);
    }

    private JsonPage write(Step step) {
        try {
            step.on(json);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return this;
    }

    @FunctionalInterface
    private interface Step {
        void on(JsonGenerator generator) throws IOException;
    }

    private static final class Escapes extends CharacterEscapes {
        @Override
        public int[] getEscapeCodesForAscii() {
            int[] codes = standardAsciiEscapesForJSON();
            codes[0x7f] = ESCAPE_STANDARD;
            return codes;
        }

        /** Asked for every character beyond ASCII; null leaves it as it is. */
        @Override
        public SerializableString getEscapeSequence(int character) {
            return Quotation.prints(character)
                    ? null
                    : new SerializedString("\\u%04X".formatted(character));
        }
    }
}

package rigbrief.cli;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Map;

/** A console whose output can be read afterwards. */
final class Captured {
    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();
    private byte[] input = {};
    private String terminals = "";
    private Map<String, String> environment = Map.of();

    Captured input(String text) {
        return input(text.getBytes(StandardCharsets.UTF_8));
    }

    Captured input(byte[] bytes) {
        input = bytes.clone();
        return this;
    }

    Captured terminals(String names) {
        terminals = names;
        return this;
    }

    Captured environment(String name, String value) {
        environment = Map.of(name, value);
        return this;
    }

    Console console() {
        return Console.of(out, err, new ByteArrayInputStream(input), terminals, environment);
    }

    ExitStatus run(String... arguments) {
        return Program.run(console(), arguments);
    }

    String out() {
        return out.toString(StandardCharsets.UTF_8);
    }

    byte[] bytes() {
        return out.toByteArray();
    }

    String err() {
        return err.toString(StandardCharsets.UTF_8);
    }
}

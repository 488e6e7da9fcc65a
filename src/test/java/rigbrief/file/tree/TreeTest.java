package rigbrief.file.tree;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rigbrief.diagnostic.Fault;
import rigbrief.diagnostic.Faults;

class TreeTest {
    @Test
    void yaml_nodes_know_their_places() {
        // Lines and columns counted by hand.
        Node.Mapping root = read("# note\na: 1\nb:\n  - x\n  - { c: 'no', d: ~ }\n");

        Node.Sequence list = (Node.Sequence) root.entries().get("b").value();
        Node.Mapping inner = (Node.Mapping) list.items().get(1);

        assertThat(root.entries().get("a").value()).isEqualTo(new Node.Scalar("1", false, 2, 4));
        assertThat(root.entries().get("b").line()).isEqualTo(3);
        assertThat(list.items().get(0)).isEqualTo(new Node.Scalar("x", false, 4, 5));
        assertThat(inner.entries().get("c").value()).isEqualTo(new Node.Scalar("no", false, 5, 10));
        assertThat(inner.entries().get("d").value()).isEqualTo(new Node.Scalar("", true, 5, 19));
    }

    @Test
    void json_nodes_know_their_places() {
        Node.Mapping root = read("{\n  \"a\": 2.50,\n\t\"b\": [true, null]\n}\n");

        Node.Sequence list = (Node.Sequence) root.entries().get("b").value();

        assertThat(root.entries().get("a").value()).isEqualTo(new Node.Scalar("2.50", false, 2, 8));
        assertThat(list.items())
                .containsExactly(
                        new Node.Scalar("true", false, 3, 8), new Node.Scalar("", true, 3, 14));
    }

    @Test
    void figures_keep_their_letters() {
        Node.Mapping root = read("a: 1_000\nb: 1e3\nc: 0x10\nd: 12:30\ne: 2450.00\nf: yes\n");

        assertThat(root.entries().values())
                .extracting(entry -> entry.value().shown())
                .containsExactly("1_000", "1e3", "0x10", "12:30", "2450.00", "yes");
    }

    @Test
    void fifty_levels_are_read() {
        Faults faults = new Faults();

        Tree.read("f", "a: " + "[".repeat(49) + "]".repeat(49) + "\n", faults);

        assertThat(faults.all()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"\"\": 1\na: 2\n\"\": 3\n", "{\"\": 1, \"a\": 2,\n\n\"\": 3}"})
    void an_empty_key_that_stands_twice_is_named_as_one(String text) {
        Faults faults = new Faults();

        Tree.read("f", text, faults);

        assertThat(faults.all())
                .extracting(Fault::text)
                .containsExactly(
                        "f:3:1: \"\": found nothing, expected each key once; put both values under"
                                + " one key");
    }

    private static Node.Mapping read(String text) {
        Faults faults = new Faults();
        Node.Mapping root = Tree.read("f", text, faults).orElseThrow();
        assertThat(faults.all()).isEmpty();
        return root;
    }
}

package rigbrief.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static rigbrief.file.FaultCase.at;
import static rigbrief.file.FaultCase.of;
import static rigbrief.file.FolderFixture.aFolder;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigbrief.catalogue.Catalogue;
import rigbrief.diagnostic.BadInput;
import rigbrief.diagnostic.Fault;

class BriefFaultTest {
    private static Catalogue catalogue;

    @BeforeAll
    static void read(@TempDir Path folder) throws BadInput {
        catalogue = CatalogueReader.read(aFolder().write(folder));
    }

    @ParameterizedTest
    @MethodSource({
        "rigbrief.file.BriefFaultCases#values",
        "rigbrief.file.BriefFaultCases#names",
        "contradictions",
        "shapes"
    })
    void one_wrong_text_in_a_brief_is_one_fault_at_its_place(FaultCase wrong) {
        String text = FolderFixture.replaceOnce(BriefText.FULL, wrong.from(), wrong.text());

        assertThat(faults(text)).isEqualTo(List.of(wrong.line("brief.yaml", BriefText.FULL)));
    }

    static Stream<FaultCase> contradictions() {
        return Stream.of(
                value(
                        "low: 50.5",
                        "low: »80",
                        "workloads[0].must.low: found \"80\", expected no more than the average;"
                                + " look whether the two are exchanged"),
                value(
                        "finish-within: 1.5m",
                        "average: »60",
                        "workloads[1].wish.average: found \"60\", expected this key with a"
                                + " frame-rate workload alone; take it out, or use another"
                                + " workload"),
                value(
                        "use: map-room",
                        "use: map-room\n    with: »{ preset: high }",
                        "workloads[2].with: found \"{preset: high}\", expected settings with a"
                                + " frame-rate workload alone; take them out"),
                value(
                        "use: map-room",
                        "use: »vault-drawing",
                        "workloads[2].use: found \"vault-drawing\", expected each workload once; put"
                                + " both needs under one use"),
                value(
                        "must: { average: 72, low: 50.5 }",
                        "must: »{}",
                        "workloads[0].must: found \"{}\", expected something asked: average, low or"
                                + " finish-within; write {average: 60}, say, or take must out"),
                at(
                        "brief.yaml",
                        "finish-within: 1.5m }",
                        "finish-within: 1.5m, weight: 5 }",
                        "2\n  - use: map-room",
                        "workloads[1].weight: found \"2\", expected one weight; take one of the two"
                                + " weights out"),
                at(
                        "brief.yaml",
                        "buy: no",
                        "buy: yes",
                        "[dp1.4",
                        "display.inputs: found \"[dp1.4, hdmi2.0:2]\", expected no inputs for a"
                                + " display that is bought with the machine; take inputs out, or"
                                + " write buy: no"),
                at(
                        "brief.yaml",
                        "colour: white, ",
                        "",
                        "yes, side",
                        "looks.colour-must: found \"yes\", expected a colour beside it; name the"
                                + " colour, or take it out"),
                value(
                        "buy: no",
                        "buy: no, part: »pane-27",
                        "display.part: found \"pane-27\", expected a part only beside buy: yes;"
                                + " write buy: yes, or take part out"),
                value(
                        "{ slot: case, part: barn-m }",
                        "{ slot: case, part: barn-m }\n  - { slot: »case, part: barn-m }",
                        "keep[1].slot: found \"case\", expected each slot once; put what is alike"
                                + " under one slot, with pieces"),
                value(
                        "few-suppliers: 1",
                        "few-suppliers: »1, simple-order: 2",
                        "wishes.few-suppliers: found \"1\", expected one of simple-order,"
                                + " few-suppliers; take one out: few-suppliers is another name of"
                                + " simple-order"));
    }

    static Stream<FaultCase> shapes() {
        return Stream.of(
                value(
                        "client: Osier Weir\n",
                        "",
                        "client: found nothing, expected a text; write it in"),
                value(
                        "client: Osier Weir",
                        "client: »[Osier, Weir]",
                        "client: found \"[Osier, Weir]\", expected a single value; write one value"
                                + " behind the colon"),
                value(
                        "front-ports: [usb-c, usb3]",
                        "front-ports: »usb-c",
                        "front-ports: found \"usb-c\", expected a list; write [first, second]"),
                value(
                        "memory: { at-least: 32, ecc: no }",
                        "memory: »32",
                        "memory: found \"32\", expected keys and values; write {key: value}, or a"
                                + " key a line"),
                at(
                        "brief.yaml",
                        "  - use: map-room",
                        "  - { weight: 3 }",
                        "{ weight: 3 }",
                        "workloads[2].use: found nothing, expected the id of a workload; write one"
                                + " of workloads.yaml"),
                value(
                        "quantity: 3",
                        "quantity: 3\n»quantity: 4",
                        "quantity: found \"quantity\", expected each key once; put both values under"
                                + " one key"),
                value(
                        "fees: { assembly: 120, tax: 19% }",
                        "fees: { assembly: 120, tax: 19% }\n---\n»client: second",
                        "document: found \"a second document\", expected one document; put it in a"
                                + " file of its own"),
                value(
                        "slot: case, part: barn-m",
                        "slot: case, part: »owned",
                        "keep[0].part: found \"owned\", expected the id of a part in the catalogue,"
                                + " or owned with its figures under spec; name the part, or"
                                + " describe it under spec"));
    }

    @Test
    void a_bracket_left_open_is_one_fault_near_it() {
        List<String> faults = faults("client: [Osier\ncurrency: EUR\n");

        assertThat(faults).singleElement().asString().startsWith("brief.yaml:2:9: file: found ");
    }

    @Test
    void json_that_breaks_off_is_one_fault() {
        List<String> faults = faults("{ \"client\": \"Osier\",\n  \"ceiling\": }");

        assertThat(faults)
                .containsExactly(
                        "brief.yaml:2:14: file: found \"no JSON\", expected YAML or JSON; look at"
                                + " this line and the one before it for a missing quote, bracket or"
                                + " blank");
    }

    @Test
    void a_value_deeper_than_fifty_levels_is_refused_without_a_stack_overflow() {
        String deep = "client: " + "[".repeat(100_000) + "]".repeat(100_000) + "\n";

        assertThat(faults(deep + BriefText.LEAST.replace("client: Osier Weir\n", "")))
                .first()
                .asString()
                .startsWith("brief.yaml:1:58: file: found \"a value on level 51\"");
    }

    @Test
    void a_bomb_of_aliases_is_refused_at_its_first_alias() {
        String bomb = "a: &a [x, x]\nb: &b [*a, *a]\nc: [*b, *b]\n";

        assertThat(faults(bomb))
                .first()
                .isEqualTo(
                        "brief.yaml:2:8: file: found \"*a\", expected the value itself; write it"
                                + " out: aliases are not followed");
    }

    @Test
    void all_faults_of_a_brief_are_told_at_once_in_the_order_of_reading() {
        String text = "ceiling: 0\nquantity: many\nwireless: never\nnois: { must: 30 }\n";

        assertThat(faults(text))
                .extracting(line -> line.replaceAll(": found.*", ""))
                .containsExactly(
                        "brief.yaml:1:1: currency",
                        "brief.yaml:1:10: ceiling",
                        "brief.yaml:1:1: client",
                        "brief.yaml:2:11: quantity",
                        "brief.yaml:3:11: wireless",
                        "brief.yaml:4:1: nois");
    }

    @Test
    void an_empty_brief_is_one_fault() {
        assertThat(faults(""))
                .containsExactly(
                        "brief.yaml:1:1: file: found nothing, expected keys and values; write them"
                                + " in");
    }

    @Test
    void a_brief_that_is_a_list_is_one_fault() {
        assertThat(faults("- client\n- currency\n"))
                .containsExactly(
                        "brief.yaml:1:1: file: found \"[client, currency]\", expected keys and"
                                + " values; begin with a key and a colon");
    }

    private static FaultCase value(String from, String to, String fault) {
        return of("brief.yaml", from, to, fault);
    }

    private static List<String> faults(String text) {
        var in = new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
        BadInput bad =
                catchThrowableOfType(
                        BadInput.class, () -> BriefReader.read(in, "brief.yaml", catalogue));
        return bad.faults().stream().map(Fault::text).toList();
    }
}

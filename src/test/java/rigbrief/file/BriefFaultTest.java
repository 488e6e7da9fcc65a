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
    @MethodSource({"values", "names", "contradictions", "shapes"})
    void one_wrong_text_in_a_brief_is_one_fault_at_its_place(FaultCase wrong) {
        String text = FolderFixture.replaceOnce(BriefText.FULL, wrong.from(), wrong.text());

        assertThat(faults(text)).isEqualTo(List.of(wrong.line("brief.yaml", BriefText.FULL)));
    }

    static Stream<FaultCase> values() {
        return Stream.of(
                value(
                        "ceiling: 5400",
                        "ceiling: »-5",
                        "ceiling: found \"-5\", expected an amount above 0, at most 100000000; write"
                                + " it in EUR, such as 1900"),
                value(
                        "ceiling: 5400",
                        "ceiling: »5,400",
                        "ceiling: found \"5,400\", expected an amount above 0, at most 100000000;"
                                + " write a decimal point, 5.400"),
                value(
                        "ceiling: 5400",
                        "ceiling: »5400.005",
                        "ceiling: found \"5400.005\", expected at most 2 decimals, as EUR has; round"
                                + " it to 5400.01"),
                value(
                        "currency: EUR",
                        "currency: »SEK",
                        "currency: found \"SEK\", expected EUR, the catalogue's currency; convert"
                                + " every amount, then write EUR"),
                value(
                        "quantity: 3",
                        "quantity: »0",
                        "quantity: found \"0\", expected a whole number from 1 to 10000; correct the"
                                + " figure, or leave the key out if unknown"),
                value(
                        "overrun: 2.5%",
                        "overrun: »2.5",
                        "overrun: found \"2.5\", expected a percentage from 0% to 50%; write it with"
                                + " its sign, such as 80%"),
                value(
                        "confidence: 90%",
                        "confidence: »100%",
                        "confidence: found \"100%\", expected a percentage from 50% to 99%, at most"
                                + " two decimals; write it with its sign, such as 80%"),
                value(
                        "resolution: 3440x1440",
                        "resolution: »wide",
                        "display.resolution: found \"wide\", expected pixels across and down; write"
                                + " 2560x1440"),
                value(
                        "[dp1.4,",
                        "[»dp9,",
                        "display.inputs[0]: found \"dp9\", expected an output standard and how many;"
                                + " write dp1.4:3 or hdmi2.1:1, with ; between several"),
                value(
                        "average: 72",
                        "average: »72 fps",
                        "workloads[0].must.average: found \"72 fps\", expected a number from 1 to"
                                + " 2000; write digits alone"),
                value(
                        "finish-within: 1.5m",
                        "finish-within: »90",
                        "workloads[1].wish.finish-within: found \"90\", expected a duration above 0"
                                + " and at most 1000h; write 90s, 1.5m or 2h"),
                value(
                        "weight: 4",
                        "weight: »6",
                        "workloads[0].wish.weight: found \"6\", expected a whole number from 1 to 5;"
                                + " correct the figure, or leave the key out if unknown"),
                value(
                        "must: 38",
                        "must: »0.5",
                        "noise.must: found \"0.5\", expected a whole number from 10 to 80; correct"
                                + " the figure, or leave the key out if unknown"),
                value(
                        "height-mm: 500",
                        "height-mm: »50cm",
                        "size.height-mm: found \"50cm\", expected a whole number of millimetres from"
                                + " 60 to 1000; write 500, or leave the key out if unknown"),
                value(
                        "at-most-litres: 45.5",
                        "at-most-litres: »45.55",
                        "size.at-most-litres: found \"45.55\", expected litres from 1 to 500, at"
                                + " most 1 decimals; correct the figure"),
                value(
                        "ecc: no",
                        "ecc: »perhaps",
                        "memory.ecc: found \"perhaps\", expected yes or no; write yes or no"),
                value(
                        "mains-v: 115",
                        "mains-v: »220",
                        "place.mains-v: found \"220\", expected one of 115, 230; write the nearer of"
                                + " the two"),
                value(
                        "quiet: 2",
                        "quiet: »9",
                        "wishes.quiet: found \"9\", expected a whole number from 0 to 5; correct the"
                                + " figure, or leave the key out if unknown"),
                value(
                        "watts: 650",
                        "watts: »65",
                        "keep[1].spec.watts: found \"65\", expected a whole number of watts from 100"
                                + " to 3000; correct the figure"));
    }

    static Stream<FaultCase> names() {
        return Stream.of(
                value(
                        "use: sunken-lanes",
                        "use: »sunken-lane",
                        "workloads[0].use: found \"sunken-lane\", expected a workload of the"
                                + " catalogue: sunken-lanes, vault-drawing, map-room; did you mean"
                                + " sunken-lanes?"),
                value(
                        "preset: high",
                        "preset: »hihg",
                        "workloads[0].with.preset: found \"hihg\", expected a preset of"
                                + " sunken-lanes: low, high; did you mean high?"),
                value(
                        "rays: full",
                        "rays: »most",
                        "workloads[0].with.rays: found \"most\", expected a ray step of"
                                + " sunken-lanes: off, full; use one of these"),
                value(
                        "upscaling: quality",
                        "upscaling: »balanced",
                        "workloads[0].with.upscaling: found \"balanced\", expected an upscaling step"
                                + " of sunken-lanes: quality, swift; use one of these"),
                value(
                        "at-once: [vault-drawing",
                        "at-once: [»vault-drawings",
                        "at-once[0]: found \"vault-drawings\", expected a workload of the catalogue:"
                                + " sunken-lanes, vault-drawing, map-room; did you mean"
                                + " vault-drawing?"),
                value(
                        "lighting: none",
                        "lighting: »dim",
                        "looks.lighting: found \"dim\", expected one of none, switchable, any; use"
                                + " one of these words"),
                value(
                        "colour: white",
                        "colour: »whitte",
                        "looks.colour: found \"whitte\", expected a word that is known here; did you"
                                + " mean white?"),
                value(
                        "side: solid",
                        "side: »glass",
                        "looks.side: found \"glass\", expected one of solid, tinted, clear; use one"
                                + " of these words"),
                value(
                        "[usb-c,",
                        "[»usbc,",
                        "front-ports[0]: found \"usbc\", expected one of usb2, usb3, usb-c, audio;"
                                + " did you mean usb2?"),
                value(
                        "slot: case",
                        "slot: »tower",
                        "keep[0].slot: found \"tower\", expected a word that is known here; use one"
                                + " of processor, board, memory, graphics, drive, second-drive,"
                                + " supply, cooler, case, fans, wireless, brace, cables, system,"
                                + " display"),
                value(
                        "part: barn-m ",
                        "part: »barn-n ",
                        "keep[0].part: found \"barn-n\", expected the id of a case in the catalogue:"
                                + " barn-m; did you mean barn-m?"),
                value(
                        "part: barn-m ",
                        "part: »tarn-6 ",
                        "keep[0].part: found \"tarn-6\", expected a part of kind case, and this is a"
                                + " processor; correct the slot or the part"),
                value(
                        "makers: [Gill]",
                        "makers: [»gill]",
                        "avoid.makers[0]: found \"gill\", expected the name of a maker as the"
                                + " catalogue has it; did you mean Gill?"),
                value(
                        "parts: [gill-8]",
                        "parts: [»gill-9]",
                        "avoid.parts[0]: found \"gill-9\", expected the id of a part in the"
                                + " catalogue; did you mean gill-8?"),
                value(
                        "suppliers: [millrace]",
                        "suppliers: [»milrace]",
                        "buying.suppliers[0]: found \"milrace\", expected a supplier of the"
                                + " catalogue: dovecote, millrace; did you mean millrace?"),
                value(
                        "need: must",
                        "need: »shall",
                        "wireless.need: found \"shall\", expected one of must, wish, none; use one"
                                + " of these words"),
                value(
                        "quantity: 3",
                        "»quantitiy: 3",
                        "quantitiy: found \"quantitiy\", expected a key that is known here; did you"
                                + " mean quantity?"),
                value(
                        "refresh: 100",
                        "refresh: 100, »refrehs: 90",
                        "display.refrehs: found \"refrehs\", expected a key that is known under"
                                + " display; did you mean refresh?"),
                value(
                        "watts: 650",
                        "watts: 650, »lenght_mm: 160",
                        "keep[1].spec.lenght_mm: found \"lenght_mm\", expected a key that is known"
                                + " under keep[1].spec; did you mean length_mm?"),
                value(
                        "quiet: 2",
                        "quiet: 2, »silence: 2",
                        "wishes.silence: found \"silence\", expected a key that is known under"
                                + " wishes; take it out"));
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

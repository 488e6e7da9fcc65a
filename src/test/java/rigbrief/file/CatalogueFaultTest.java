package rigbrief.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static rigbrief.file.FaultCase.at;
import static rigbrief.file.FaultCase.of;
import static rigbrief.file.FolderFixture.aFolder;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigbrief.diagnostic.BadInput;
import rigbrief.diagnostic.Fault;

class CatalogueFaultTest {
    @ParameterizedTest
    @MethodSource({"partCases", "offerCases", "headCases", "workloadCases"})
    void one_wrong_text_in_a_catalogue_is_one_fault_at_its_place(
            FaultCase wrong, @TempDir Path folder) {
        String text = aFolder().text(wrong.file());
        Path written = aFolder().replace(wrong.file(), wrong.from(), wrong.text()).write(folder);

        BadInput bad = catchThrowableOfType(BadInput.class, () -> CatalogueReader.read(written));

        String name = written.resolve(wrong.file()).toString();
        String line = wrong.line(name, text).replace("FOLDER", written.toString());
        assertThat(bad.faults()).extracting(Fault::text).isEqualTo(List.of(line));
    }

    static Stream<FaultCase> partCases() {
        return Stream.of(
                of(
                        "cooler.csv",
                        ",158,",
                        ",»\"15,8 cm\",",
                        "height_mm: found \"15,8 cm\", expected a whole number of millimetres from"
                                + " 20 to 300; write 158, or leave the cell empty if unknown"),
                of(
                        "cooler.csv",
                        ",158,",
                        ",»158mm,",
                        "height_mm: found \"158mm\", expected a whole number of millimetres from"
                                + " 20 to 300; write 158, or leave the cell empty if unknown"),
                of(
                        "graphics.csv",
                        ",286,",
                        ",»3000,",
                        "length_mm: found \"3000\", expected a whole number of millimetres from"
                                + " 100 to 500; correct the figure, or leave the cell empty if"
                                + " unknown"),
                of(
                        "graphics.csv",
                        ",1250,",
                        ",»1.25 kg,",
                        "mass_g: found \"1.25 kg\", expected a whole number of grams from 1 to"
                                + " 60000; write 1250, or leave the cell empty if unknown"),
                of(
                        "processor.csv",
                        ",3.7,",
                        ",»\"3,7\",",
                        "base_ghz: found \"3,7\", expected a number of gigahertz from 0.5 to 8;"
                                + " write 3.7"),
                of(
                        "processor.csv",
                        ",101,",
                        ",»1e2,",
                        "rate_single: found \"1e2\", expected a number from 5 to 1000; write digits"
                                + " alone"),
                of(
                        "processor.csv",
                        ",640,",
                        ",»NaN,",
                        "rate_all: found \"NaN\", expected a number from 5 to 20000; write digits"
                                + " alone"),
                of(
                        "memory.csv",
                        ",2,16,",
                        ",2,»0,",
                        "module_gb: found \"0\", expected a whole number of gigabytes from 1 to"
                                + " 512; correct the figure"),
                of(
                        "case.csv",
                        ",218,",
                        ",»-218,",
                        "width_mm: found \"-218\", expected a whole number of millimetres from 60"
                                + " to 700; correct the figure"),
                of(
                        "case.csv",
                        ",470,455",
                        ",»,455",
                        "height_mm: found nothing, expected a whole number of millimetres from 60"
                                + " to 900; write the figure in digits"),
                of(
                        "drive.csv",
                        ",Mere,",
                        ",»,",
                        "maker: found nothing, expected a text; write it in"),
                of(
                        "fan.csv",
                        "airt-120",
                        "Airt 120",
                        "id: found \"Airt 120\", expected an id of lower-case letters, digits, dots"
                                + " and hyphens; write it in lower case with hyphens for blanks"),
                of(
                        "drive.csv",
                        ",One,",
                        ",»\u001b[2JOne,",
                        "model: found \"\\u001B[2JOne\", expected a text in one line, without"
                                + " control characters; write it again without them"),
                of(
                        "memory.csv",
                        ",ddr5,",
                        ",»ddr55,",
                        "type: found \"ddr55\", expected one of ddr4, ddr5; did you mean ddr5?"),
                of(
                        "memory.csv",
                        ",no\n",
                        ",»maybe\n",
                        "ecc: found \"maybe\", expected yes or no; write yes or no"),
                of(
                        "memory.csv",
                        ",black,",
                        ",»blakc,",
                        "colour: found \"blakc\", expected a word that is known here; did you mean"
                                + " black?"),
                of(
                        "memory.csv",
                        ",black,",
                        ",»aubergine,",
                        "colour: found \"aubergine\", expected a word that is known here; use one"
                                + " of black, white, grey, silver, beige, wood, red, blue, green,"
                                + " pink"),
                of(
                        "processor.csv",
                        ",6291041500213,",
                        ",»6291041500214,",
                        "gtin: found \"6291041500214\", expected check digit 3 at the end; compare"
                                + " every digit with the package, or leave the cell empty if"
                                + " unknown"),
                of(
                        "processor.csv",
                        ",6291041500213,",
                        ",»629104,",
                        "gtin: found \"629104\", expected a GS1 item number of 8, 12, 13 or 14"
                                + " digits; copy it from the package, or leave the cell empty if"
                                + " unknown"),
                of(
                        "processor.csv",
                        ",4.9,",
                        ",»3.1,",
                        "boost_ghz: found \"3.1\", expected at least base_ghz, 3.7; look both"
                                + " figures up again"),
                at(
                        "processor.csv",
                        "ddr5@5600;",
                        "ddr5-5600;",
                        "ddr5-5600;ddr4",
                        "memory: found \"ddr5-5600\", expected a generation and a rate in MT/s;"
                                + " write ddr5@5600, with ; between several"),
                at(
                        "cables.csv",
                        "atx24;eps8",
                        "atx24;;eps8",
                        "atx24;;",
                        "covers: found \"atx24;;eps8;8pin\", expected an entry on each side of"
                                + " every ;; take the ; out that has nothing beside it"),
                at(
                        "supply.csv",
                        "eps8:2",
                        "eps8:0",
                        "atx24:1",
                        "connectors: found \"eps8:0\", expected a word and a number from 1 to 99,"
                                + " the word one of atx24, eps8, eps4, 8pin, 6pin, 12v2x6, sata,"
                                + " 4pin; write atx24:2, with ; between several, or none"),
                at(
                        "supply.csv",
                        "eps8:2",
                        "atx24:2",
                        "atx24:1",
                        "connectors: found \"atx24:2\", expected each word once; add the two"
                                + " numbers up"),
                at(
                        "board.csv",
                        "takes sata-3,",
                        "takes sata-7,",
                        "\"m2-2 takes",
                        "shares: found \"sata-7\", expected a SATA port from 1 to 4; correct it, or"
                                + " the column that counts them"),
                at(
                        "board.csv",
                        "m2-1 takes",
                        "m2-4 takes",
                        "\"m2-2 takes",
                        "shares: found \"m2-4\", expected an M.2 slot from 1 to 3; correct it, or"
                                + " the column that counts them"),
                at(
                        "cooler.csv",
                        "air,sq7",
                        "liquid,sq7",
                        ",,0.21",
                        "radiator_mm: found nothing, expected the radiator's length class for a"
                                + " liquid cooler; write 120, 240, 280, 360 or as its maker says"),
                of(
                        "cables.csv",
                        "cord-w",
                        "prop-1",
                        "id: found \"prop-1\", expected an id used once, and it stands at"
                                + " FOLDER/brace.csv:2; give one of the two another id"),
                at(
                        "fan.csv",
                        ",pwm4,90",
                        ",pwm4",
                        "pwm4",
                        "row: found \"16 cells\", expected 17 as in the header; add the missing"
                                + " commas"),
                at(
                        "fan.csv",
                        "Slow 120",
                        "Slow, 120",
                        "90\n",
                        "row: found \"18 cells\", expected 17 as in the header; put a cell that"
                                + " holds a comma between quotes"),
                at(
                        "fan.csv",
                        "Slow 120",
                        "\"Slow 120",
                        "\"Slow 120",
                        "file: found \"a cell that begins here and does not end\", expected a comma"
                                + " or the end of the line behind every closing quote; close the"
                                + " quote, and write \"\" for a quote inside a cell"),
                at(
                        "fan.csv",
                        "size_mm,",
                        "size_cm,",
                        "id,maker",
                        "size_mm: found nothing, expected a column of this name; add it to the"
                                + " header; it holds a whole number of millimetres from 40 to 230"),
                at(
                        "fan.csv",
                        "pack,connector",
                        "size_mm,connector",
                        "size_mm,connector",
                        "header: found \"size_mm\", expected each column once; take one of the two"
                                + " columns out"));
    }

    static Stream<FaultCase> offerCases() {
        return Stream.of(
                of(
                        "offers.csv",
                        "mere-1t",
                        "mere-1",
                        "part: found \"mere-1\", expected the id of a part in one of the part"
                                + " files; did you mean mere-1t?"),
                at(
                        "offers.csv",
                        "tarn-6,millrace",
                        "tarn-6,milrace",
                        "milrace",
                        "supplier: found \"milrace\", expected a supplier of catalog.yaml:"
                                + " dovecote, millrace; did you mean millrace?"),
                of(
                        "offers.csv",
                        "189.90,EUR",
                        "189.90,»CHF",
                        "currency: found \"CHF\", expected EUR, the catalogue's currency; convert"
                                + " the price, then write EUR"),
                of(
                        "offers.csv",
                        "189.90",
                        "189.905",
                        "price: found \"189.905\", expected at most 2 decimals, as EUR has; round"
                                + " it to 189.91"),
                of(
                        "offers.csv",
                        "189.90",
                        "\"189,90\"",
                        "price: found \"189,90\", expected an amount above 0, at most 100000000;"
                                + " write a decimal point, 189.90"),
                of(
                        "offers.csv",
                        "189.90",
                        "-189.90",
                        "price: found \"-189.90\", expected an amount above 0, at most 100000000;"
                                + " write it in EUR, such as 1900"),
                of(
                        "offers.csv",
                        "189.90",
                        "free",
                        "price: found \"free\", expected an amount above 0, at most 100000000;"
                                + " write it in EUR, such as 1900"),
                of(
                        "offers.csv",
                        ",12,1,",
                        ",»-12,1,",
                        "stock: found \"-12\", expected a whole number from 0 to 1000000; correct"
                                + " the figure"),
                of(
                        "offers.csv",
                        "2026-11-19",
                        "2026-02-30",
                        "as_of: found \"2026-02-30\", expected a date of the calendar; write year,"
                                + " month, day: 2026-11-20"),
                of(
                        "offers.csv",
                        "2026-11-19",
                        "19.11.2026",
                        "as_of: found \"19.11.2026\", expected a date of the calendar; write year,"
                                + " month, day: 2026-11-20"));
    }

    static Stream<FaultCase> headCases() {
        return Stream.of(
                of(
                        "catalog.yaml",
                        "EUR",
                        "euro",
                        "currency: found \"euro\", expected an ISO 4217 currency; write its three"
                                + " capitals, such as EUR"),
                of(
                        "catalog.yaml",
                        "2026-11-20",
                        "yesterday",
                        "as-of: found \"yesterday\", expected a date of the calendar; write year,"
                                + " month, day: 2026-11-20"),
                at(
                        "catalog.yaml",
                        "as-of: 2026-11-20\n",
                        "",
                        "name: Small",
                        "as-of: found nothing, expected a date of the calendar; write year, month,"
                                + " day: 2026-11-20"),
                of(
                        "catalog.yaml",
                        "inlet-c",
                        "inlet-f",
                        "reference.inlet-f: found \"inlet-f\", expected a key that is known under"
                                + " reference; did you mean inlet-c?"),
                of(
                        "catalog.yaml",
                        "delivery: 0 }\n",
                        "delivery: 0 }\n  - { id: »dovecote, name: Again, delivery: 1 }\n",
                        "suppliers[2].id: found \"dovecote\", expected an id used once; give one of"
                                + " the two another id"),
                at(
                        "catalog.yaml",
                        ", delivery: 0 }",
                        " }",
                        "{ id: millrace",
                        "suppliers[1].delivery: found nothing, expected an amount from 0 to"
                                + " 100000000; write it in EUR, such as 1900"));
    }

    static Stream<FaultCase> workloadCases() {
        return Stream.of(
                at(
                        "workloads.yaml",
                        "share: 0.25",
                        "share: 0.35",
                        "- { name: open lane",
                        "workloads[0].scenes: found \"[{name: open lane, share: 0.7, graphics: 1,"
                                + " processor: 1}, {name: market, sha...\", expected shares that"
                                + " make 1 together; correct the shares"),
                of(
                        "workloads.yaml",
                        "reference-preset: high",
                        "reference-preset: »higher",
                        "workloads[0].reference-preset: found \"higher\", expected one of the"
                                + " presets: low, high; did you mean high?"),
                of(
                        "workloads.yaml",
                        "id: map-room",
                        "id: »vault-drawing ",
                        "workloads[2].id: found \"vault-drawing\", expected an id used once; give"
                                + " one of the two another id"),
                of(
                        "workloads.yaml",
                        "kind: capacity",
                        "kind: »capacities",
                        "workloads[2].kind: found \"capacities\", expected one of frame-rate,"
                                + " task-time, capacity; did you mean capacity?"),
                of(
                        "workloads.yaml",
                        "n: 12",
                        "n: »twelve",
                        "workloads[0].fitted.n: found \"twelve\", expected a whole number from 0 to"
                                + " 1000000; write digits alone"),
                of(
                        "workloads.yaml",
                        "growth-gb-per-year",
                        "growth-per-year",
                        "workloads[2].growth-per-year: found \"growth-per-year\", expected a key"
                                + " that is known under workloads[2]; did you mean growth-gb-per-year?"),
                at(
                        "workloads.yaml",
                        "    title: Map Room\n",
                        "",
                        "id: map-room",
                        "workloads[2].title: found nothing, expected a text; write it in"),
                at(
                        "workloads.yaml",
                        "serial: 900, parallel: 15000, gflop: 30000, read-gb: 3, write-gb: 1",
                        "serial: 0",
                        "{ serial: 0 }",
                        "workloads[1].work: found \"{serial: 0}\", expected some work above 0; write"
                                + " serial, parallel or gflop"));
    }
}

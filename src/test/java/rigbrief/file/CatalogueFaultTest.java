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
    @MethodSource({
        "rigbrief.file.PartFaultCases#partCases",
        "offerCases",
        "headCases",
        "workloadCases"
    })
    void one_wrong_text_in_a_catalogue_is_one_fault_at_its_place(
            FaultCase wrong, @TempDir Path folder) {
        String text = aFolder().text(wrong.file());
        Path written = aFolder().replace(wrong.file(), wrong.from(), wrong.text()).write(folder);

        BadInput bad = catchThrowableOfType(BadInput.class, () -> CatalogueReader.read(written));

        String name = written.resolve(wrong.file()).toString();
        String line = wrong.line(name, text).replace("FOLDER", written.toString());
        assertThat(bad.faults()).extracting(Fault::text).isEqualTo(List.of(line));
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

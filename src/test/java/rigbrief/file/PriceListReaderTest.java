package rigbrief.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static rigbrief.file.FolderFixture.aFolder;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rigbrief.catalogue.Catalogue;
import rigbrief.diagnostic.BadInput;
import rigbrief.diagnostic.Fault;
import rigbrief.pricelist.PriceList;
import rigbrief.pricelist.PriceRow;

class PriceListReaderTest {
    private static final String MAP =
            """
            supplier: dovecote
            encoding: iso-8859-1
            delimiter: semicolon
            decimal: comma
            thousands: point
            skip-lines: 1
            as-of: 2026-12-01
            date-form: dd.mm.yyyy
            columns: { number: Nummer, words: [Name, Zusatz], price: Preis, stock: Bestand, lead-days: Tage }
            stock-words: { viele: 99 }
            no-price: [auf Anfrage]
            """;
    private static final String LIST =
            """
            Preise für Händler
            Nummer;Name;Zusatz;Preis;Bestand;Tage
            T-6;Sechskern;"groß; schnell";1.189,90;1.200;2
            ;Sonderposten;;auf Anfrage;1;1
            W-7;Netzteil;;EUR 99;viele;4
            """;

    private static Catalogue catalogue;

    @TempDir Path folder;

    @BeforeAll
    static void readCatalogue(@TempDir Path stock) throws BadInput {
        catalogue = CatalogueReader.read(aFolder().write(stock));
    }

    @BeforeEach
    void writeMap() throws IOException {
        Files.writeString(folder.resolve("map.yaml"), MAP);
    }

    @Test
    void rows_are_read_as_the_map_says() throws Exception {
        PriceList list = read(LIST.getBytes(StandardCharsets.ISO_8859_1));

        assertThat(list.supplier()).isEqualTo("dovecote");
        assertThat(list.withoutPrice()).isEqualTo(1);
        assertThat(list.rows()).hasSize(2);
        PriceRow first = list.rows().get(0);
        assertThat(first.line()).isEqualTo(3);
        assertThat(first.words()).isEqualTo("Sechskern groß; schnell");
        assertThat(first.price().plain()).isEqualTo("1189.90");
        assertThat(first.stock()).isEqualTo(1200);
        assertThat(first.leadDays()).isEqualTo(2);
        assertThat(first.asOf()).isEqualTo(LocalDate.of(2026, 12, 1));
        assertThat(list.rows().get(1).stock()).isEqualTo(99);
    }

    /** Marks of the Unicode Standard, section 23.8; UTF-16 of Java writes the big-endian one. */
    @ParameterizedTest
    @ValueSource(strings = {"UTF-8", "UTF-16LE", "UTF-16BE"})
    void a_byte_order_mark_decides_before_the_map_does(String name) throws Exception {
        byte[] marked = ("\uFEFF" + LIST).getBytes(Charset.forName(name));

        assertThat(read(marked).rows().get(0).words()).isEqualTo("Sechskern groß; schnell");
    }

    /** Windows-1252 has the euro sign at 0x80, where ISO 8859-1 has a control character. */
    @Test
    void the_euro_sign_of_windows_stands_beside_an_amount() throws Exception {
        Files.writeString(folder.resolve("map.yaml"), MAP.replace("iso-8859-1", "windows-1252"));
        byte[] bytes = LIST.replace("EUR 99", "99,00 #").getBytes(StandardCharsets.ISO_8859_1);
        for (int i = 0; i < bytes.length; i++) {
            bytes[i] = bytes[i] == '#' ? (byte) 0x80 : bytes[i];
        }

        assertThat(read(bytes).rows().get(1).price().plain()).isEqualTo("99.00");
    }

    @Test
    void bytes_that_mean_nothing_are_told_with_their_place() throws Exception {
        Files.writeString(folder.resolve("map.yaml"), MAP.replace("iso-8859-1", "utf-8"));

        assertThat(faults(LIST.getBytes(StandardCharsets.ISO_8859_1)))
                .containsExactly(
                        "list.csv:1:9: file: found \"byte 0xFC\", expected UTF-8; correct encoding"
                                + " in the map, or save the file again");
    }

    @Test
    void every_wrong_cell_is_told_at_its_place() throws Exception {
        String wrong = LIST.replace("1.189,90", "1,189.90").replace(";viele;4", ";etliche;bald");

        assertThat(faults(wrong.getBytes(StandardCharsets.ISO_8859_1)))
                .extracting(line -> line.replaceAll(", expected.*", ""))
                .containsExactly(
                        "list.csv:3:31: Preis: found \"1,189.90\"",
                        "list.csv:5:22: Bestand: found \"etliche\"",
                        "list.csv:5:30: Tage: found \"bald\"");
    }

    @Test
    void a_list_without_a_date_anywhere_is_refused() throws Exception {
        Files.writeString(folder.resolve("map.yaml"), MAP.replace("as-of: 2026-12-01\n", ""));

        assertThat(faults(LIST.getBytes(StandardCharsets.ISO_8859_1)).get(0))
                .contains("as-of: found nothing, expected the date of the list");
    }

    @Test
    void a_list_in_another_currency_is_converted_at_the_rate_of_the_map() throws Exception {
        // 1189.90 at 0.85 is 1011.415, half up 1011.42: hand calculation.
        Files.writeString(folder.resolve("map.yaml"), MAP + "currency: CHF\nrate: 0.85\n");

        assertThat(
                        read(LIST.replace("EUR", "CHF").getBytes(StandardCharsets.ISO_8859_1))
                                .rows()
                                .get(0)
                                .price()
                                .plain())
                .isEqualTo("1011.42");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "supplier: dovecote | supplier: dovecot | did you mean dovecote?",
                "decimal: comma | decimal: point | another sign than decimal",
                "as-of: 2026-12-01 | currency: CHF | how much EUR one CHF is",
                "price: Preis, | | the header of the column with prices",
                "stock: Bestand, | | a column of stock, or one number for all",
                "encoding: iso-8859-1 | encoding: ebcdic | one of utf-8, iso-8859-1",
                "skip-lines: 1 | skiplines: 1 | did you mean skip-lines?"
            })
    void a_wrong_map_is_refused(String from, String to, String fault) throws Exception {
        String wrong = FolderFixture.replaceOnce(MAP, from, to == null ? "" : to);
        Files.writeString(folder.resolve("map.yaml"), wrong);

        BadInput bad =
                catchThrowableOfType(
                        BadInput.class,
                        () -> PriceListMapReader.read(folder.resolve("map.yaml"), catalogue));

        assertThat(bad.faults()).extracting(Fault::text).anyMatch(line -> line.contains(fault));
    }

    private PriceList read(byte[] bytes) throws IOException, BadInput {
        Path list = Files.write(folder.resolve("list.csv"), bytes);
        PriceListMap map = PriceListMapReader.read(folder.resolve("map.yaml"), catalogue);
        return PriceListReader.read(list, map, Optional.empty(), catalogue);
    }

    private List<String> faults(byte[] bytes) {
        BadInput bad = catchThrowableOfType(BadInput.class, () -> read(bytes));
        return bad.faults().stream().map(fault -> fault.text().replace(folder + "/", "")).toList();
    }
}

package rigbrief.file;

import static rigbrief.file.FaultCase.at;
import static rigbrief.file.FaultCase.of;

import java.util.stream.Stream;

/** What can be wrong in a part file. */
final class PartFaultCases {
    private PartFaultCases() {}

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
                        "module_gb: found \"0\", expected a whole number of GB from 1 to"
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
}

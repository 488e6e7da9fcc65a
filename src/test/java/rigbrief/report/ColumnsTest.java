package rigbrief.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.jline.utils.WCWidth;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ColumnsTest {

    /** EastAsianWidth.txt, Unicode 14: values W, F, N, Na, A; marks from UnicodeData.txt. */
    @ParameterizedTest
    @CsvSource({
        "0x41, 1", // Na, LATIN CAPITAL LETTER A
        "0xE9, 1", // A, LATIN SMALL LETTER E WITH ACUTE
        "0x300, 0", // Mn, COMBINING GRAVE ACCENT
        "0x20DD, 0", // Me, COMBINING ENCLOSING CIRCLE
        "0x10FF, 1", // N, the last before the wide Hangul letters
        "0x1100, 2", // W, HANGUL CHOSEONG KIYEOK
        "0x115F, 2", // W, HANGUL CHOSEONG FILLER
        "0x1160, 1", // N, HANGUL JUNGSEONG FILLER
        "0x2026, 1", // A, HORIZONTAL ELLIPSIS
        "0x231A, 2", // W, WATCH
        "0x303F, 1", // N, IDEOGRAPHIC HALF FILL SPACE
        "0x6F22, 2", // W, a CJK ideograph
        "0xFF21, 2", // F, FULLWIDTH LATIN CAPITAL LETTER A
        "0xFF71, 1", // H, HALFWIDTH KATAKANA LETTER A
        "0x1F5A5, 1", // N, DESKTOP COMPUTER
        "0x1F642, 2", // W, SLIGHTLY SMILING FACE
        "0x20000, 2", // W, a CJK ideograph of extension B
    })
    void a_character_takes_the_columns_of_its_east_asian_width(String codePoint, int columns) {
        assertThat(Columns.of(Integer.decode(codePoint))).isEqualTo(columns);
    }

    @Test
    void ideographs_and_plain_letters_agree_with_the_terminal_library() {
        List<String> apart = new ArrayList<>();

        for (int c = 0x20; c < 0x30000; c++) {
            boolean letter = Character.isIdeographic(c) || c < 0x600 && Character.isLetter(c);
            if (letter && !newer(c) && Columns.of(c) != WCWidth.wcwidth(c)) {
                apart.add(Integer.toHexString(c));
            }
        }

        assertThat(apart).isEmpty();
    }

    /** Scripts that Unicode took in after the library's table was made. */
    private static boolean newer(int codePoint) {
        return codePoint >= 0x16000 && codePoint < 0x20000;
    }

    @Test
    void a_text_takes_the_sum_of_its_characters() {
        assertThat(Columns.of("漢字 cafe\u0301 \ud83d\ude42")).isEqualTo(4 + 1 + 4 + 1 + 2);
    }
}

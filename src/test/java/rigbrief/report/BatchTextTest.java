package rigbrief.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class BatchTextTest {
    @Test
    void a_batch_is_a_table_and_its_failures() {
        assertThat(new BatchText().write(BatchAnswers.mixed(), Style.PLAIN))
                .isEqualTo(
                        """
                        5 briefs: 2 proposed, 1 impossible, 1 bad input, 1 called off. 1 of them was
                        answered before.

                          result  ended         lean  balanced      full
                          ----------------------------------------------
                          anvil   proposed    479.63         -  595.02 *
                          desks   proposed         -         -         -
                                  in two variants: 22,978.54
                          hask    impossible       -         -         -
                          =mail   bad input        -         -         -
                          moss    called off       -         -         -
                          Totals in EUR. A star: not proven best; its result says how far off it may be.

                        Without a result
                        =mail.yaml: bad input
                          =mail.yaml:3:10: ceiling: found -5, expected more; write it
                          and 6 more like these
                        moss.yaml: called off
                        """);
    }
}

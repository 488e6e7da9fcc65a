package rigbrief.cli;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import rigbrief.api.FrontSearch;
import rigbrief.api.Json;
import rigbrief.batch.Batch;
import rigbrief.file.BuildWriter;
import rigbrief.proposal.Proposals;
import rigbrief.report.ProposalsText;
import rigbrief.report.Style;
import rigbrief.report.page.ProposalPage;
import rigbrief.report.page.Words;

/**
 * The files that a batch keeps of an answer: the answer itself, and a build file per tier, named as
 * for a single brief.
 *
 * @param format how the answer is written
 * @param language language of pages
 * @param time ceiling on the time of the search between the proposals, which pages ask for
 */
record ResultFiles(ProposalFormat format, LanguageOption language, Optional<Duration> time)
        implements Batch.Writing {

    @Override
    public Map<String, byte[]> files(Proposals answer) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        files.put(answer.brief().name() + ending(), answer(answer));
        BuildFolder.records(answer)
                .forEach((name, record) -> files.put(name, utf8(BuildWriter.write(record))));
        return files;
    }

    private String ending() {
        return format == ProposalFormat.TEXT ? ".txt" : format.ending();
    }

    private byte[] answer(Proposals answer) {
        return switch (format) {
            case TEXT -> utf8(new ProposalsText().write(answer, Style.PLAIN));
            case JSON -> utf8(Json.of(answer));
            case HTML, PDF -> page(answer);
        };
    }

    private byte[] page(Proposals answer) {
        Words words = language.words(answer.brief());
        Proposals wide = FrontSearch.widened(answer, time);
        return PageOutput.bytes(ProposalPage.of(wide, words), words, format == ProposalFormat.PDF);
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}

package rigbrief.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rigbrief.brief.Brief;
import rigbrief.build.BuildRecord;
import rigbrief.file.BuildWriter;
import rigbrief.file.FileSet;
import rigbrief.proposal.Proposal;
import rigbrief.proposal.Proposals;
import rigbrief.proposal.Tier;

/**
 * A folder that build files are written into, one per tier.
 *
 * @param folder the folder
 * @param force whether files that are there are overwritten
 */
record BuildFolder(Path folder, boolean force) {
    /** The first variant of a mix. */
    static final String FIRST = "first-variant";

    /** The second variant of a mix. */
    static final String SECOND = "second-variant";

    /** The file of a tier. */
    Path file(Brief brief, Tier tier) {
        return file(brief, tier.word());
    }

    /** The file of a variant. */
    Path file(Brief brief, String which) {
        return folder.resolve(name(brief, which));
    }

    private static String name(Brief brief, String which) {
        return brief.name() + "-" + which + ".build.yaml";
    }

    /** What there is to be filed of an answer, by the name of its file. */
    static Map<String, BuildRecord> records(Proposals answer) {
        Map<String, BuildRecord> records = new LinkedHashMap<>();
        for (Proposal proposal : answer.proposals()) {
            records.put(name(answer.brief(), proposal.tier().word()), proposal.record());
        }
        answer.mix()
                .ifPresent(
                        mix -> {
                            records.put(name(answer.brief(), FIRST), mix.first().record());
                            records.put(name(answer.brief(), SECOND), mix.second().record());
                        });
        return records;
    }

    /** Refuses to begin a search whose result could not be kept. */
    void refuseIfTaken(Brief brief) throws NotWritten {
        List<Path> files = new ArrayList<>();
        for (Tier tier : Tier.values()) {
            files.add(file(brief, tier));
        }
        if (brief.buying().variants()) {
            files.add(file(brief, FIRST));
            files.add(file(brief, SECOND));
        }
        for (Path file : files) {
            if (!force && Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
                throw taken(file);
            }
        }
        if (Files.exists(folder) && !Files.isDirectory(folder)) {
            throw new NotWritten(
                    folder + ": found a file, expected a folder; choose another --out");
        }
    }

    /** Writes all proposals, or none, and those of one answer before those of another run. */
    void write(Proposals answer) throws NotWritten {
        FileSet builds = FileSet.of(folder, answer.brief().name() + ".build");
        for (Map.Entry<String, BuildRecord> each : records(answer).entrySet()) {
            builds.add(each.getKey(), BuildWriter.write(each.getValue()));
        }
        try {
            builds.write(force);
        } catch (IOException e) {
            throw NotWritten.of(folder, e, "choose another --out");
        }
    }

    private static NotWritten taken(Path file) {
        return new NotWritten(
                file + ": found a file of that name; choose another --out, or add --force");
    }
}

package rigbrief.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
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
        return folder.resolve(brief.name() + "-" + which + ".build.yaml");
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
        Brief brief = answer.brief();
        FileSet builds = FileSet.of(folder, brief.name() + ".build");
        for (Proposal proposal : answer.proposals()) {
            add(builds, file(brief, proposal.tier()), proposal.record());
        }
        if (answer.mix().isPresent()) {
            add(builds, file(brief, FIRST), answer.mix().get().first().record());
            add(builds, file(brief, SECOND), answer.mix().get().second().record());
        }
        try {
            builds.write(force);
        } catch (IOException e) {
            throw NotWritten.of(folder, e, "choose another --out");
        }
    }

    private static void add(FileSet builds, Path file, BuildRecord record) {
        builds.add(file.getFileName().toString(), BuildWriter.write(record));
    }

    private static NotWritten taken(Path file) {
        return new NotWritten(
                file + ": found a file of that name; choose another --out, or add --force");
    }
}

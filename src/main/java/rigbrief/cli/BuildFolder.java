package rigbrief.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import rigbrief.brief.Brief;
import rigbrief.file.BuildWriter;
import rigbrief.file.FileRefused;
import rigbrief.file.SafeWriter;
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

    /** The file of a tier. */
    Path file(Brief brief, Tier tier) {
        return folder.resolve(brief.name() + "-" + tier.word() + ".build.yaml");
    }

    /** Refuses to begin a search whose result could not be kept. */
    void refuseIfTaken(Brief brief) throws NotWritten {
        for (Tier tier : Tier.values()) {
            Path file = file(brief, tier);
            if (!force && Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
                throw taken(file);
            }
        }
        if (Files.exists(folder) && !Files.isDirectory(folder)) {
            throw new NotWritten(
                    folder + ": found a file, expected a folder; choose another --out");
        }
    }

    /** Writes each proposal whole. */
    void write(Proposals answer) throws NotWritten {
        for (Proposal proposal : answer.proposals()) {
            Path file = file(answer.brief(), proposal.tier());
            try {
                SafeWriter.write(file, BuildWriter.write(proposal.record()), force);
            } catch (FileRefused e) {
                throw new NotWritten(e.getMessage());
            } catch (IOException e) {
                throw new NotWritten(
                        file + ": can't be written (" + e.getMessage() + "); choose another --out");
            }
        }
    }

    private static NotWritten taken(Path file) {
        return new NotWritten(
                file + ": found a file of that name; choose another --out, or add --force");
    }
}

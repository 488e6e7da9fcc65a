package rigbrief.batch;

import java.nio.file.Path;

/**
 * A brief of a batch.
 *
 * @param file its file
 * @param result name of its result's folder; no other brief of the batch has it, whatever the case
 *     of the letters
 */
public record BatchBrief(Path file, String result) {}

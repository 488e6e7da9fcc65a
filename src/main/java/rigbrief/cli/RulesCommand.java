package rigbrief.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import rigbrief.report.RulesText;
import rigbrief.rule.Rules;

/** Lists the rules. */
@Command(
        name = "rules",
        description = "Lists every rule with its unit and its source.",
        footer = {"", "Next: rigbrief audit BUILD"})
final class RulesCommand implements Callable<Integer> {
    private final Console console;

    RulesCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        console.print(new RulesText().write(Rules.ALL, console.style()));
        NextLine.print(console, "rigbrief audit BUILD");
        return ExitStatus.DONE.code();
    }
}

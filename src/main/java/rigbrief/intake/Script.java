package rigbrief.intake;

import java.util.List;

/** The steps of the interview, one line each, in the order in which they are taken. */
final class Script {
    static final List<Step> STEPS =
            List.of(
                    OrderSteps::client,
                    WorkloadSteps::choosing,
                    ScreenSteps::which,
                    ScreenSteps::picture,
                    ScreenSteps::sockets,
                    ScreenSteps::count,
                    GameSteps::tuning,
                    GameSteps::pictures,
                    GameSteps::rays,
                    GameSteps::upscaling,
                    GameSteps::smoothness,
                    TaskSteps::durations,
                    TaskSteps::faster,
                    WorkloadSteps::atOnce,
                    LookSteps::noise,
                    LookSteps::noiseMust,
                    LookSteps::size,
                    LookSteps::looks,
                    LookSteps::colourMust,
                    PartSteps::fittings,
                    PartSteps::owned,
                    OwnSteps::described,
                    PartSteps::avoided,
                    OrderSteps::delivery,
                    MoneySteps::wishes,
                    FigureSteps::more,
                    FigureSteps::figures,
                    MoneySteps::ceiling,
                    MoneySteps::review);

    private Script() {}
}

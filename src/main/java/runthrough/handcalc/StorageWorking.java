package runthrough.handcalc;

import runthrough.quantity.Kind;

/** Works out what a coil change takes from the accumulator, and how it is filled again. */
final class StorageWorking {
    private final Sheet sheet;
    private final ClosedForms forms;
    private final Storage storage;
    private final Term speed;
    private final Ramps ramps;
    private final Term usable;
    private final Term runOut;
    private final LineCase lineCase;

    StorageWorking(Sheet sheet, LineCase lineCase, Term speed, Ramps ramps, Term usable, Term runOut) {
        this.sheet = sheet;
        this.lineCase = lineCase;
        this.forms = lineCase.forms();
        this.storage = lineCase.storage();
        this.speed = speed;
        this.ramps = ramps;
        this.usable = usable;
        this.runOut = runOut;
    }

    void work(Term joint, GivenWorking given) {
        Term capacity = given.capacity(lineCase.line().accumulator().form());
        Term reserve = sheet.given("R", "reserve", forms.reserve(), Kind.LENGTH);
        Term stopping = sheet.given("d_p", "process deceleration", forms.processDeceleration(), Kind.ACCELERATION);
        String without = storage.withoutSlowing().isPresent() ? ", were there no slowing" : "";
        Term drawn =
                sheet.step(new Term("D", "strip drawn", storage.stripDrawn(), Kind.LENGTH), ramps.missed(speed, joint));
        sheet.step(
                new Term(
                        "C_min",
                        "capacity needed" + without,
                        storage.atRatedSpeed().capacity().needed(),
                        Kind.LENGTH),
                storage.atRatedSpeed().capacity(),
                new Sum().plus("{}", drawn).plus("{}", reserve).plusRamp(speed, stopping));
        longestJoint(capacity, reserve, stopping, without);
        fastestSpeed(capacity, reserve, stopping, joint, without);
        lineCase.slowing()
                .ifPresent(slowing -> new SlowingWorking(sheet, slowing, storage, speed, ramps)
                        .work(capacity, drawn, joint, new SlowingWorking.Stopping(reserve, stopping)));
        refill(drawn);
    }

    private void longestJoint(Term capacity, Term reserve, Term stopping, String without) {
        Sum inBrackets = new Sum()
                .plus("{}", capacity)
                .minus("{}", reserve)
                .minusRamp(speed, ramps.deceleration())
                .minusRamp(speed, ramps.acceleration())
                .minusRamp(speed, stopping);
        ramps.creep().ifPresent(c -> inBrackets.minus("({} - {}) * {}", speed, c.speed(), c.time()));
        sheet.step(
                new Term(
                        "T_max",
                        "longest joint cycle time" + without,
                        storage.atRatedSpeed().jointCycleTime().given(),
                        Kind.TIME),
                storage.atRatedSpeed().jointCycleTime(),
                inBrackets.over(speed));
    }

    /** The positive root; with b for the time and c for the strip, {@code 2 c / (b + sqrt(b^2 + 4 c k))}. */
    private void fastestSpeed(Term capacity, Term reserve, Term stopping, Term joint, String without) {
        Sum time = new Sum().plus("{}", joint);
        Sum strip = new Sum().plus("{}", capacity).minus("{}", reserve);
        ramps.creep().ifPresent(c -> {
            time.plus("{}", c.time());
            strip.plus("{} * {}", c.speed(), c.time());
        });
        double creepTime = forms.entry().creepTime();
        double creepSpeed = ramps.creep().map(c -> c.speed().value()).orElse(0.0);
        Term b = sheet.step(new Term("b", "time", joint.value() + creepTime, Kind.TIME), time);
        Term c = sheet.step(
                new Term("c", "strip", forms.capacity() - forms.reserve() + creepSpeed * creepTime, Kind.LENGTH),
                strip);
        Sum slowness = new Sum()
                .plusInverse("2 / {}", ramps.deceleration())
                .plusInverse("2 / {}", ramps.acceleration())
                .plusInverse("2 / {}", stopping);
        Sum root = new Sum()
                .plus("2 * {} / ({} + sqrt({}^2 + {} * (", c, b, b, c)
                .join(slowness)
                .join(")))");
        sheet.step(
                new Term(
                        "V_max",
                        "fastest process speed" + without,
                        storage.atRatedSpeed().speed().given(),
                        Kind.SPEED),
                storage.atRatedSpeed().speed(),
                root);
    }

    private void refill(Term drawn) {
        storage.refill().ifPresent(refill -> {
            Term time = refillTime(refill, drawn);
            Term before = sheet.step(
                    new Term("L_run", "strip of a coil before its change", forms.stripBeforeChange(), Kind.LENGTH),
                    "{} - {}",
                    usable,
                    runOut);
            sheet.step(
                    new Term(
                            "L_fill",
                            "strip of a coil until the accumulator is full",
                            refill.entryStrip(),
                            Kind.LENGTH),
                    new Margin(Kind.LENGTH, before.value(), refill.entryStrip()),
                    new Sum().plus("{}", drawn).plus("{} * {}", speed, time).plusRamp(speed, ramps.acceleration()));
        });
    }

    private Term refillTime(Refill refill, Term drawn) {
        Term top = sheet.given("V_e", "entry top speed", forms.topSpeed(), Kind.SPEED);
        Term overspeed = new Term("u", "entry faster than process", forms.overspeed(), Kind.SPEED);
        if (Double.isInfinite(forms.fillRateLimit())) {
            sheet.step(overspeed, "{} - {}", top, speed);
        } else {
            Term limit = sheet.given("F", "fill-rate limit", forms.fillRateLimit(), Kind.SPEED);
            sheet.step(overspeed, "min({} - {}, {})", top, speed, limit);
        }
        Term gain = sheet.step(
                new Term("G", "gained while speeding up and slowing down", forms.gainOnRamps(), Kind.LENGTH),
                new Sum().plusRamp(overspeed, ramps.acceleration()).plusRamp(overspeed, ramps.deceleration()));
        Term result = new Term("T_fill", "refill time", refill.time(), Kind.TIME);
        if (refill.isHeld()) {
            return sheet.step(result, rampTimes(overspeed).plus("({} - {}) / {}", drawn, gain, overspeed));
        }
        Sum slowness =
                new Sum().plusInverse("1 / {}", ramps.acceleration()).plusInverse("1 / {}", ramps.deceleration());
        Term peak = sheet.step(
                new Term("u_p", "turns back at", refill.overspeed(), Kind.SPEED),
                new Sum().plus("sqrt(2 * {} / (", drawn).join(slowness).join("))"));
        return sheet.step(result, rampTimes(peak));
    }

    private Sum rampTimes(Term overspeed) {
        return new Sum().plusQuotient(overspeed, ramps.acceleration()).plusQuotient(overspeed, ramps.deceleration());
    }
}

package runthrough.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityParserTest {

    private static String refusal(String text, Dimension wanted) {
        Reading reading = QuantityParser.read(text, wanted);
        assertThat(reading).isInstanceOf(Reading.Unreadable.class);
        Reading.Unreadable unreadable = (Reading.Unreadable) reading;
        return unreadable.rule() + ". " + unreadable.remedy();
    }

    @ParameterizedTest
    @CsvSource({
        "45 m/min, SPEED, 0.75",
        "45m/min, SPEED, 0.75",
        "+45 m/min, SPEED, 0.75",
        "' 45   m/min ', SPEED, 0.75",
        "45\u00a0m/min, SPEED, 0.75",
        "45\u202fm/min, SPEED, 0.75",
        "\u00a045 m/min\u00a0, SPEED, 0.75",
        "1:30\u00a0min, TIME, 90",
        "1e3 mm, LENGTH, 1",
        "1.5E-1 m, LENGTH, 0.15",
        ".5 m, LENGTH, 0.5",
        "2. m, LENGTH, 2",
        "-9 m, LENGTH, -9",
        "0 m, LENGTH, 0",
        "99.5 %, SHARE, 0.995",
        "99.5%, SHARE, 0.995",
        "0.3 m/s2, ACCELERATION, 0.3",
        "1.5 min, TIME, 90",
        "1:30 min, TIME, 90",
        "0:07.5min, TIME, 7.5",
        "83:00 min, TIME, 4980",
        "2 d, TIME, 172800",
        "12 t, MASS, 12000",
        "10 short ton, MASS, 9071.8474",
        "210 GPa, STRESS, 210e9",
    })
    void aNumberWithItsUnitIsReadIntoSi(String text, Dimension wanted, double si) {
        Reading reading = QuantityParser.read(text, wanted);

        assertThat(reading)
                .isInstanceOfSatisfying(
                        Quantity.class, quantity -> assertThat(quantity.si()).isEqualTo(si));
    }

    @Test
    void aMissingUnitIsAnsweredWithTheAllowedOnesAndAnExample() {
        assertThat(refusal("45", Dimension.SPEED))
                .isEqualTo("the unit is missing; allowed for speed are m/s, m/min, m/h, mm/s, mm/min, ft/s, ft/min, "
                        + "ft/h, in/s, in/min. Write it like 45 m/min or 150 ft/min.");
    }

    @Test
    void aTimeWithAColonIsMinutesAndSecondsOnlyWhereItSaysSo() {
        assertThat(refusal("1:10", Dimension.TIME))
                .isEqualTo("the unit is missing. Write 1:10 min if it is minutes and seconds.");
        assertThat(refusal("1:70 min", Dimension.TIME))
                .startsWith("minutes and seconds are written like 1:30 min, with seconds from 00 to 59. Write it like");
        assertThat(refusal("-1:10 min", Dimension.TIME))
                .startsWith("minutes and seconds are written like 1:30 min, with seconds from 00 to 59. Write it like");
        assertThat(refusal("1:5 min", Dimension.TIME)).endsWith(" Write 1:05 min.");
        assertThat(refusal("1:30 minutes", Dimension.TIME)).endsWith(" Write 1:30 min.");
        assertThat(refusal("1:30 h", Dimension.TIME)).isEqualTo("hours and minutes are not read. Write 90 min.");
        assertThat(refusal("1:10 min", Dimension.LENGTH)).startsWith("is minutes and seconds, and not length.");
    }

    @Test
    void aUnitOfAnotherKindIsNamedAsSuch() {
        assertThat(refusal("45 m", Dimension.TIME))
                .isEqualTo("m is a unit of length, not of time; allowed are ms, s, min, h, d. "
                        + "Write it like 90 s or 1.5 min.");
    }

    @ParameterizedTest
    @CsvSource({
        "12 sec, TIME, Write s.",
        "12 MIN, TIME, Write min.",
        "12 inches, LENGTH, Write in.",
        "12 fpm, SPEED, Write ft/min.",
        "12 m/s/s, ACCELERATION, Write m/s2.",
        "12 m s-2, ACCELERATION, Write m/s2.",
        "12 N/mm2, STRESS, Write MPa.",
        "12 lbs, MASS, Write lb.",
        "12 parsec, LENGTH, Write it like 12.5 m or 40 ft."
    })
    void anUnknownUnitIsAnsweredWithTheOneMeantWhereThatIsKnown(String text, Dimension wanted, String remedy) {
        assertThat(refusal(text, wanted))
                .contains("unknown unit \"" + text.substring(3))
                .endsWith(remedy);
    }

    @ParameterizedTest
    @ValueSource(strings = {"12 ton", "12 tons", "12 Ton"})
    void aBareTonIsRefusedBecauseItMayMeanThree(String text) {
        assertThat(refusal(text, Dimension.MASS))
                .endsWith("Write t (1000 kg), short ton (2000 lb) or long ton (2240 lb): a bare ton may mean any of "
                        + "them.");
    }

    @Test
    void aDecimalCommaIsExplained() {
        assertThat(refusal("1,5 mm", Dimension.LENGTH))
                .isEqualTo("a number has a decimal point and no commas. Write 1.5 mm.");
        assertThat(refusal("1.200,5 mm", Dimension.LENGTH)).endsWith("Write 1200.5 mm.");
        assertThat(refusal("1\u00a0200,5 mm", Dimension.LENGTH)).endsWith("Write 1200.5 mm.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"1 200 mm", "1\u00a0200 mm", "1\u202f200 mm"})
    void digitsInGroupsAreExplained(String text) {
        assertThat(refusal(text, Dimension.LENGTH))
                .isEqualTo("a number has no blanks between its digits. Write 1200 mm.");
    }

    /** Of a text as long as a file may be, nobody waits for what it might mean. */
    @ParameterizedTest
    @ValueSource(strings = {"9", "9 ", "9.", "9-", "9/", "9:", ",9", "x"})
    void aTextTooLongForANumberIsRefusedAtOnce(String piece) {
        String text = "1" + piece.repeat(200_000);

        assertThat(assertTimeoutPreemptively(Duration.ofSeconds(5), () -> refusal(text, Dimension.TIME)))
                .startsWith("must be a number with a unit of time, of at most 200 letters. Write it like ");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "4-8 s",
                "4 s - 8 s",
                "4 \u2013 8 s",
                "4..8 s",
                "4 to 8 s",
                "1,5-2 s",
                "1:30-2:00 min",
                "1 000 - 1 200 s"
            })
    void aRangeIsNoNumber(String text) {
        assertThat(refusal(text, Dimension.TIME)).startsWith("is a range, and not one number. Write it like ");
    }

    /** A month is no range, whatever it is given for. */
    @Test
    void aDateThatIsCutOffIsNoRange() {
        assertThat(refusal("2026-03", Dimension.TIME)).doesNotContain("range");
        assertThat(refusal("2026-03-01", Dimension.TIME)).doesNotContain("range");
    }

    @Test
    void aCommaThatMayGroupThousandsIsNotGuessedAt() {
        assertThat(refusal("26,000 lb", Dimension.MASS))
                .endsWith("Write 26000 lb if the comma groups thousands, 26.000 lb if it is a decimal comma.");
        // Of these, one reading alone is a number.
        assertThat(refusal("26,000.5 lb", Dimension.MASS)).endsWith("no commas. Write 26000.5 lb.");
        assertThat(refusal("1,026,000 lb", Dimension.MASS)).endsWith("no commas. Write 1026000 lb.");
        assertThat(refusal("26 000,5 lb", Dimension.MASS)).endsWith("no commas. Write 26000.5 lb.");
        assertThat(refusal("0,750 lb", Dimension.MASS)).endsWith("no commas. Write 0.750 lb.");
        assertThat(refusal("1,2,3 lb", Dimension.MASS)).endsWith("Write it with a decimal point and no commas.");
        assertThat(refusal("1.026.000 lb", Dimension.MASS))
                .isEqualTo("a number has one decimal point. Write 1026000 lb if points group thousands.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"NaN m", "nan", ".nan", "Infinity m", "inf m", "-.inf", "+Inf m"})
    void notANumberAndInfinityAreRefused(String text) {
        assertThat(refusal(text, Dimension.LENGTH)).startsWith("must be a finite number with a unit");
    }

    @ParameterizedTest
    @ValueSource(strings = {"1e999 m", "1e308 km"})
    void aNumberTooLargeForTheComputerIsRefused(String text) {
        assertThat(refusal(text, Dimension.LENGTH)).endsWith("The number is too large.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"0x10 m", "0x1p3 m"})
    void hexadecimalDigitsAreRefused(String text) {
        assertThat(refusal(text, Dimension.LENGTH)).startsWith("a number is written in decimal digits. Write it like ");
    }

    @ParameterizedTest
    @ValueSource(strings = {"m", "", "about 3 m", "--3 m", "=3 m", "٣ m"})
    void whatIsNotADecimalNumberIsRefused(String text) {
        assertThat(refusal(text, Dimension.LENGTH)).startsWith("must be a number with a unit of length");
    }

    @ParameterizedTest
    @ValueSource(strings = {"1/4 in", "1-1/2 in", "1 1/2 in"})
    void fractionsAreRefusedWithTheDecimalWayShown(String text) {
        assertThat(refusal(text, Dimension.LENGTH))
                .isEqualTo("fractions are not read. Write it as a decimal number, such as 0.25 in.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"1d m", "1f m", "1_000 m"})
    void javasOwnNumberFormsAreNotNumbersHere(String text) {
        assertThat(refusal(text, Dimension.LENGTH)).startsWith("unknown unit");
    }

    @Test
    void theMachinesLanguageMakesNoDifference() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            assertThat(QuantityParser.read("2.5 mm", Dimension.LENGTH))
                    .isEqualTo(new Quantity(2.5, Unit.MILLIMETRE))
                    .hasToString("2.5 mm");
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void aPlainNumberHasNoUnit() {
        assertThat(QuantityParser.readNumber("1.15")).contains(1.15);
        assertThat(QuantityParser.readNumber("1.15 m")).isEmpty();
        assertThat(QuantityParser.readNumber("NaN")).isEmpty();
        assertThat(QuantityParser.readNumber("1e999")).isEmpty();
    }

    @ParameterizedTest
    @EnumSource
    void everyExampleShownToUsersIsReadable(Dimension dimension) {
        assertThat(dimension.examples())
                .allSatisfy(example ->
                        assertThat(QuantityParser.read(example, dimension)).isInstanceOf(Quantity.class));
    }
}

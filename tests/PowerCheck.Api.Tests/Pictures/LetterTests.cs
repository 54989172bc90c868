using PowerCheck.Api.Pictures.Drawing;

namespace PowerCheck.Api.Tests.Pictures;

/// <summary>The letters of the pictures come with the program, and text is set with them.</summary>
public sealed class LetterTests
{
    [Fact]
    public void They_are_there_without_any_of_the_machine()
    {
        Assert.Equal(
            (Typefaces.Family, false),
            (Typefaces.Plain.FamilyName, Typefaces.Plain.IsBold)
        );
        Assert.Equal((Typefaces.Family, true), (Typefaces.Bold.FamilyName, Typefaces.Bold.IsBold));
    }

    [Fact]
    public void Every_sign_in_use_is_among_them() =>
        Assert.All(
            "Aaz09 äöüßéñ ΩµΔ °·×−–—…≤≥±→←▲⚠✓✗■●◆".EnumerateRunes(),
            rune => Assert.True(Typefaces.Has(rune), rune.ToString())
        );

    [Theory]
    [InlineData("a\tb\u65e5c", "a b?c")]
    [InlineData("plain", "plain")]
    public void What_cannot_be_drawn_is_a_question_mark(string text, string drawn) =>
        Assert.Equal(drawn, Typesetting.Clean(text));

    [Fact]
    public void Lines_have_whole_words_and_fit()
    {
        const string Text = "Do not drain a pack under its cut-off voltage or ask more of it";

        var lines = Typesetting.Wrap(Text, Face.Small, 120);

        Assert.True(lines.Count > 2);
        Assert.Equal(Text, string.Join(' ', lines));
        Assert.All(lines, line => Assert.True(Typesetting.Width(line, Face.Small) <= 120));
    }

    [Fact]
    public void A_word_wider_than_a_line_is_cut()
    {
        var word = new string('w', 100);

        var lines = Typesetting.Wrap(word, Face.Small, 90);

        Assert.Equal(word, string.Concat(lines));
        Assert.All(lines, line => Assert.True(Typesetting.Width(line, Face.Small) <= 90));
    }

    [Fact]
    public void What_does_not_fit_ends_in_dots()
    {
        var fitted = Typesetting.Fit(new string('w', 100), Face.Small, 90);

        Assert.EndsWith("w…", fitted, StringComparison.Ordinal);
        Assert.InRange(Typesetting.Width(fitted, Face.Small), 70, 90);
        Assert.Equal("short", Typesetting.Fit("short", Face.Small, 90));
    }
}

using System.Globalization;
using PowerCheck.Model.Assumptions;
using PowerCheck.Model.Batteries;
using PowerCheck.Model.Findings;

namespace PowerCheck.Model.Tests.Specs;

/// <summary>The figures and words of the document's tables are those that the model works with.</summary>
public sealed class DocumentTableTests
{
    public static TheoryData<string, string> Counts
    {
        get
        {
            var counts = new TheoryData<string, string>();
            foreach (var row in ModelDocument.Rows("| code | what is compared |"))
            {
                foreach (var code in row[0].Split(", ").Where(code => !code.Contains(' ')))
                {
                    counts.Add(code, row[3]);
                }
            }

            return counts;
        }
    }

    [Theory]
    [MemberData(nameof(Counts))]
    public void A_finding_counts_for_the_verdict_where_the_document_says_judged(
        string code,
        string counts
    )
    {
        var kind = FindingCatalogue.All.Single(kind => kind.Code == code);

        Assert.Equal(counts.StartsWith("judged", StringComparison.Ordinal), kind.Judged);
    }

    [Fact]
    public void The_document_says_of_every_finding_whether_it_counts() =>
        Assert.Equal(
            FindingCatalogue.All.Select(kind => kind.Code).Order(StringComparer.Ordinal),
            Counts.Select(row => (string)row[0]).Order(StringComparer.Ordinal)
        );

    public static TheoryData<string> Chemistries =>
        [.. Enum.GetValues<Chemistry>().Select(chemistry => Words.Of(chemistry))];

    [Theory]
    [MemberData(nameof(Chemistries))]
    public void A_cell_is_typical_as_the_document_has_it(string chemistry)
    {
        var row = ModelDocument.Rows("| | full V | nominal V |").Single(row => row[0] == chemistry);
        var cell = CellData.For(
            Enum.GetValues<Chemistry>().Single(value => Words.Of(value) == chemistry)
        );

        // Milliohm times ampere-hours and grams over ampere-hours: 1 Ah is 3600 C.
        Assert.Equal(
            row.Skip(1).Select(text => double.Parse(text, CultureInfo.InvariantCulture)),
            [
                cell.FullV,
                cell.NominalV,
                cell.CutoffV,
                Math.Round(cell.ResistanceOhmCoulomb / 3.6, 9),
                cell.LastingFactor,
                Math.Round(cell.MassKgPerCellCoulomb * 3.6e6, 9),
                cell.PeukertExponent,
            ]
        );
        Assert.Equal(chemistry != "nimh", cell.Lithium);
    }
}

using System.Text;
using PowerCheck.Api.Checks;
using PowerCheck.Api.Checks.Requests;
using PowerCheck.Api.Door;
using PowerCheck.Api.Links;
using PowerCheck.Model.Spreads;

namespace PowerCheck.Api.Pages.Answers;

/// <summary>The example rig as the parameters of a link.</summary>
internal static class ExampleLink
{
    /// <summary>The parameters.</summary>
    public static string Query { get; } =
        RigLink.Query(
            new(
                RequestReader
                    .Read<CheckRequest>(Encoding.UTF8.GetBytes(ExampleRig.Json), new())
                    .Request!,
                new(AllFindings: false, SpreadMethod.Linear, Remedies: true)
            )
        );
}

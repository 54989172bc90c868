using System.Security.Cryptography;
using System.Text;
using Microsoft.Net.Http.Headers;
using PowerCheck.Api.Checks;
using PowerCheck.Api.Links;
using PowerCheck.Model.Checks;

namespace PowerCheck.Api.Faces;

/// <summary>Tells whether a stored answer to a link is still right, without computing it again.</summary>
internal static class CheckTag
{
    // Words and layout may change without the model: each build has its own tags.
    private static readonly string Build = typeof(CheckTag).Module.ModuleVersionId.ToString("N");

    /// <summary>The tag of an answer: of rig, options, form, model version and build. A weak one: it is the same compressed or not.</summary>
    /// <param name="call">What is asked.</param>
    /// <param name="form">The form, with whatever else shapes it.</param>
    public static EntityTagHeaderValue Of(CheckCall call, string form)
    {
        var whole = string.Join('\n', RigLink.Query(call), form, ModelVersion.Current, Build);
        var hash = SHA256.HashData(Encoding.UTF8.GetBytes(whole));
        return new($"\"{Convert.ToHexStringLower(hash.AsSpan(0, 16))}\"", isWeak: true);
    }

    /// <summary>Whether the caller has this answer already (RFC 9110, 13.1.2).</summary>
    /// <param name="request">The request.</param>
    /// <param name="tag">The tag of the answer.</param>
    public static bool IsKnown(HttpRequest request, EntityTagHeaderValue tag) =>
        request
            .GetTypedHeaders()
            .IfNoneMatch.Any(known =>
                known.Equals(EntityTagHeaderValue.Any)
                || known.Compare(tag, useStrongComparison: false)
            );
}

using PowerCheck.Api.Checks;
using PowerCheck.Api.Display;
using PowerCheck.Api.Faces;
using PowerCheck.Api.Links;
using PowerCheck.Api.Pages.Forms;
using PowerCheck.Api.Pipeline;
using PowerCheck.Api.Problems;

namespace PowerCheck.Api.Pages;

/// <summary>Makes what the page shows, in each of its three states.</summary>
internal static class PageMaker
{
    /// <summary>Nothing is filled in.</summary>
    public static PageView Empty(HttpRequest request)
    {
        var units = UnitsOption.Of(request.Query, new());
        return new()
        {
            Base = Base(request),
            Units = units,
            Form = FormMaker.Make(
                FormValues.None,
                Assumed.OfTypical(units),
                FieldMistakes.None,
                units
            ),
            Options = Options(request.Query),
            Address = PageAddress.Of(Base(request), "", units),
        };
    }

    /// <summary>A rig was checked.</summary>
    /// <param name="request">The request.</param>
    /// <param name="view">The check.</param>
    /// <param name="pictures">Pictures of it; null where none are shown.</param>
    public static PageView Checked(HttpRequest request, CheckView view, PagePictures? pictures)
    {
        var units = UnitsOption.Of(request.Query, new());
        var assumed = new Assumed(view.Answer.Assumptions, units);
        var form = FormMaker.Make(FormValues.Of(view.Call), assumed, FieldMistakes.None, units);
        return new()
        {
            Base = Base(request),
            Units = units,
            Form = form,
            Options = CheckOptions
                .Said(view.Call.Options)
                .ToDictionary(option => option.Path, option => option.Text, StringComparer.Ordinal),
            Answer = new(view.Answer, new(Base(request), view.Call, units), pictures, units, form),
            Address = view.Answer.Links is null
                ? null
                : PageAddress.Of(Base(request), RigLink.Query(view.Call), units),
        };
    }

    /// <summary>Something is wrong.</summary>
    public static PageView Wrong(HttpRequest request, Problem problem)
    {
        var units = UnitsOption.Of(request.Query, new());
        var mistakes = new FieldMistakes(problem.Errors ?? []);
        var form = FormMaker.Make(
            FormValues.Of(request.Query),
            Assumed.OfTypical(units),
            mistakes,
            units
        );
        return new()
        {
            Base = Base(request),
            Units = units,
            Form = form,
            Options = Options(request.Query),
            Problem = problem,
            Mistakes = [.. mistakes.All],
            Address =
                $"{Base(request)}/{QueryString.Create(request.Query.Where(pair => pair.Key is not FormOption.Name))}",
        };
    }

    private static string Base(HttpRequest request) => request.PathBase.ToUriComponent();

    private static Dictionary<string, string> Options(IQueryCollection query) =>
        CheckOptions
            .Said(CheckOptions.Of(query, new()))
            .ToDictionary(option => option.Path, option => option.Text, StringComparer.Ordinal);
}

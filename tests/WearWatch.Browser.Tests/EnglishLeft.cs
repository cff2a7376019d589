using System.Text.RegularExpressions;
using WearWatch.Chains;
using WearWatch.Chains.Families;

namespace WearWatch.Browser.Tests;

/// <summary>What is still English on a page that is shown in German or Spanish.</summary>
internal static partial class EnglishLeft
{
    /// <summary>What the domain says of a family as a constant text, longest first.</summary>
    private static readonly IReadOnlyList<string> ofTheDomain =
    [
        .. ChainFamily.All.SelectMany(family => Caution.For(family, true).Concat(Caution.For(family, false))
            .Append(Caution.LiftingInBrief).Append(family.PropAtSwap).Append(family.ClosingStep))
            .Select(said => $"{said}").Distinct().OrderByDescending(said => said.Length),
    ];

    /// <summary>
    /// Texts and readable attributes of the page's main part that have a word of an English sentence. The banner above every page
    /// is not the page's.
    /// </summary>
    public static async Task<IReadOnlyList<string>> EnglishAsync(this Visit visit)
    {
        var texts = await visit.Page.EvaluateAsync<string[]>("""
            () => {
              const texts = [];
              const seen = NodeFilter.SHOW_TEXT | NodeFilter.SHOW_ELEMENT;
              const walk = document.createTreeWalker(document.querySelector('main'), seen);
              for (let node = walk.nextNode(); node; node = walk.nextNode()) {
                if ((node.parentElement ?? node).closest('.open-banner')) continue;
                if (node.nodeType === Node.TEXT_NODE) texts.push(node.data.trim());
                else for (const name of ['aria-label', 'placeholder', 'title', 'alt'])
                  if (node.hasAttribute(name)) texts.push(node.getAttribute(name));
              }
              return [...new Set(texts)];
            }
            """);
        return
        [
            .. texts.Where(text => English().IsMatch(
                ofTheDomain.Aggregate(text, (left, said) => left.Replace(said, " ", StringComparison.Ordinal)))),
        ];
    }

    // Words that hardly an English sentence is without, and words of the planner; no German or Spanish text has them.
    [GeneratedRegex(@"\b(the|of|and|with|this|that|from|to|is|are|be|for|it|its|by|chains?|swaps?|swapped|shutdowns?|parts?"
        + "|pitch|pitches|teeth|hours|people|crew|order|costs?|limit|moved?|saved|page|lines?|early|date|not|none|here|there"
        + "|look|change|remove|once|every)\\b", RegexOptions.IgnoreCase)]
    private static partial Regex English();
}

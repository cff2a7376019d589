using System.Reflection;
using System.Reflection.Emit;

namespace WearWatch.Dashboard.Tests.Architecture;

/// <summary>What the members of a type refer to, read from its compiled code.</summary>
/// <remarks>Constants leave no trace there: the compiler writes their value. <see cref="SourceTree"/> finds those.</remarks>
internal static class Code
{
    private const BindingFlags Own =
        BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;

    private static readonly Dictionary<short, OpCode> OpCodesByValue =
        typeof(OpCodes).GetFields().Select(f => (OpCode)f.GetValue(null)!).ToDictionary(c => c.Value);

    /// <summary>
    /// Types that stand in a type's own declaration and code, as written: arrays, generics and nested ones among them.
    /// </summary>
    public static IEnumerable<Type?> ReferencesOf(Type type)
    {
        IEnumerable<Type?> declared = [type.BaseType, .. type.GetInterfaces(), .. OfAttributes(type.GetCustomAttributesData())];
        if (type.IsGenericTypeDefinition)
            declared = declared.Concat(type.GetGenericArguments().SelectMany(g => g.GetGenericParameterConstraints()));
        return declared
            .Concat(type.GetFields(Own)
                .SelectMany(f => (IEnumerable<Type?>)[f.FieldType, .. OfAttributes(f.GetCustomAttributesData())]))
            .Concat(type.GetProperties(Own).SelectMany(p => OfAttributes(p.GetCustomAttributesData())))
            .Concat(type.GetMethods(Own).Concat<MethodBase>(type.GetConstructors(Own)).SelectMany(OfMethod));
    }

    private static IEnumerable<Type?> OfMethod(MethodBase method) =>
    [
        .. OfSignature(method),
        .. OfAttributes(method.GetCustomAttributesData()),
        .. method.GetParameters().SelectMany(p => OfAttributes(p.GetCustomAttributesData())),
        .. OfBody(method),
    ];

    private static IEnumerable<Type?> OfSignature(MethodBase method)
    {
        if (method is MethodInfo { ReturnType: var returned }) yield return returned;
        foreach (var parameter in method.GetParameters()) yield return parameter.ParameterType;
        if (!method.IsGenericMethod) yield break;
        foreach (var argument in method.GetGenericArguments()) yield return argument;
    }

    private static IEnumerable<Type?> OfAttributes(IEnumerable<CustomAttributeData> attributes) => attributes.SelectMany(a =>
        (IEnumerable<Type?>)[a.AttributeType,
            .. a.ConstructorArguments.Concat(a.NamedArguments.Select(n => n.TypedValue)).Select(v => v.Value as Type)]);

    private static IEnumerable<Type?> OfBody(MethodBase method)
    {
        if (method.GetMethodBody() is not { } body) yield break;
        foreach (var local in body.LocalVariables) yield return local.LocalType;
        foreach (var caught in body.ExceptionHandlingClauses.Where(c => c.Flags == ExceptionHandlingClauseOptions.Clause))
            yield return caught.CatchType;
        var ofType = method.DeclaringType is { IsGenericType: true } declaring ? declaring.GetGenericArguments() : null;
        var ofMethod = method.IsGenericMethod ? method.GetGenericArguments() : null;
        foreach (var token in Tokens(body.GetILAsByteArray()!))
        {
            var member = method.Module.ResolveMember(token, ofType, ofMethod);
            yield return member as Type ?? member?.DeclaringType;
            if (member is FieldInfo field) yield return field.FieldType;
            if (member is not MethodBase called) continue;
            foreach (var type in OfSignature(called)) yield return type;
        }
    }

    /// <summary>The methods that a type's own code calls.</summary>
    public static IEnumerable<MethodBase> CallsOf(Type type) =>
        from method in type.GetMethods(Own).Concat<MethodBase>(type.GetConstructors(Own))
        let code = method.GetMethodBody()?.GetILAsByteArray()
        where code is not null
        from token in Tokens(code)
        let ofType = type.IsGenericType ? type.GetGenericArguments() : null
        let ofMethod = method.IsGenericMethod ? method.GetGenericArguments() : null
        let called = method.Module.ResolveMember(token, ofType, ofMethod) as MethodBase
        where called is not null
        select called;

    private static IEnumerable<int> Tokens(byte[] code)
    {
        for (var at = 0; at < code.Length;)
        {
            var opCode = OpCodesByValue[code[at] == 0xfe ? BitConverter.ToInt16([code[at + 1], code[at]]) : code[at]];
            at += opCode.Size;
            if (opCode.OperandType is OperandType.InlineField or OperandType.InlineMethod or OperandType.InlineTok
                or OperandType.InlineType)
                yield return BitConverter.ToInt32(code, at);
            at += opCode.OperandType switch
            {
                OperandType.InlineNone => 0,
                OperandType.ShortInlineBrTarget or OperandType.ShortInlineI or OperandType.ShortInlineVar => 1,
                OperandType.InlineVar => 2,
                OperandType.InlineI8 or OperandType.InlineR => 8,
                OperandType.InlineSwitch => 4 + 4 * BitConverter.ToInt32(code, at),
                _ => 4,
            };
        }
    }
}
